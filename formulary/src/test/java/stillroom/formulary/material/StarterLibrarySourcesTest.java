package stillroom.formulary.material;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillroom.formulary.constants.AcidConstants;
import stillroom.formulary.constants.AcidConstantsFile;

class StarterLibrarySourcesTest {
    private static final StarterLibrary LIBRARY = StarterLibrary.load();
    private static final Set<String> MARKS = Set.of("from memory", "common practice, no source");

    @Test
    void eachSourceStandsInTheBibliographyOrSaysThatThereIsNone() throws IOException {
        Set<String> known = bibliography();
        known.addAll(MARKS);
        assertThat(allSources())
                .hasSizeGreaterThan(3)
                .allSatisfy(source -> assertThat(known).contains(source));
    }

    @Test
    void eachFilledFactOfACardHasASource() {
        for (Material material : LIBRARY.materials()) {
            assertThat(material.sources().keySet()).as(material.key()).containsAll(filled(material));
        }
    }

    @Test
    void eachAcidKeyHasItsConstants() {
        AcidConstants constants = AcidConstantsFile.shipped();
        List<String> missing = LIBRARY.substances().stream()
                .flatMap(s -> s.acidKey().stream())
                .filter(key -> constants.find(key).isEmpty())
                .toList();
        assertThat(missing).isEmpty();
        assertThat(LIBRARY.substances().stream().filter(s -> s.acidKey().isPresent()))
                .hasSizeGreaterThan(80);
    }

    private static List<String> filled(Material material) {
        List<String> filled = new ArrayList<>(List.of("functions", "composition"));
        material.strength().ifPresent(x -> filled.add("strength"));
        material.usage().ifPresent(x -> filled.add("usage"));
        material.workingPh().ifPresent(x -> filled.add("workingPh"));
        material.ownPh().ifPresent(x -> filled.add("ownPh"));
        material.densityGramsPerMillilitre().ifPresent(x -> filled.add("densityGramsPerMillilitre"));
        material.maxCelsius().ifPresent(x -> filled.add("maxCelsius"));
        material.naturalOriginIndex().ifPresent(x -> filled.add("naturalOriginIndex"));
        return filled;
    }

    private static Set<String> allSources() {
        Set<String> sources = new HashSet<>();
        LIBRARY.substances().forEach(s -> sources.addAll(List.of(s.source().split("; "))));
        for (Material material : LIBRARY.materials()) {
            material.sources().values().forEach(s -> sources.addAll(List.of(s.split("; "))));
        }
        return sources;
    }

    private static Set<String> bibliography() throws IOException {
        Set<String> keys = new HashSet<>();
        try (var rows = CsvReader.builder().ofNamedCsvRecord(Path.of("..", "docs", "sources.csv"))) {
            rows.forEach(row -> keys.add(row.getField("key")));
        }
        return keys;
    }
}
