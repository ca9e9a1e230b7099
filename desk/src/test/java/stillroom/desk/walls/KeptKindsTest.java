package stillroom.desk.walls;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What lies in drawers is documented, and goes through the round trip of the ledger's tests. */
class KeptKindsTest {
    private static final Pattern DRAWER = Pattern.compile("(?:drawer|happenings)\\(\\s*\"([a-z-]+)\"");

    /** Records of the pages alone, which say nothing without the program: any shape is taken. */
    private static final Set<String> OF_THE_PAGES = Set.of("blend", "kept-of-formula-file", "premix-purpose");

    @Test
    void everyKindStandsInTheSchemaOfTheWorkshop() throws IOException {
        Set<String> kinds = new TreeSet<>();
        try (Stream<Path> sources = Files.walk(Path.of("src", "main", "java"))) {
            for (Path source :
                    sources.filter(file -> file.toString().endsWith(".java")).toList()) {
                Matcher found = DRAWER.matcher(Files.readString(source));
                while (found.find()) {
                    kinds.add(found.group(1));
                }
            }
        }
        assertThat(kinds).hasSizeGreaterThan(10).containsAll(OF_THE_PAGES);
        kinds.removeAll(OF_THE_PAGES);
        String schema = Files.readString(Path.of("..", "docs", "schema", "workshop-1.json"));
        assertThat(kinds).allSatisfy(kind -> assertThat(schema).contains("\"const\" : \"" + kind + "\""));
    }
}
