package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.StarterLibrary;

/** Each card of the program's own library can be pinned and reads back as it was. */
final class StarterPinTest {
    @TempDir
    Path folder;

    @Test
    void everyStarterCardIsStoredAsItIs() {
        Map<String, Material> library =
                StarterLibrary.load().materials().stream().collect(Collectors.toMap(Material::key, card -> card));
        assertThat(library).hasSizeGreaterThan(100);
        Map<String, Integer> pinned = new HashMap<>();
        try (Ledger ledger = Ledger.open(folder)) {
            pinned.putAll(ledger.materials().pin(library.keySet()));
            assertThat(ledger.materials().pin(library.keySet()))
                    .as("pinned once")
                    .isEqualTo(pinned);
            assertThat(ledger.materials().own()).isEmpty();
        }
        try (Ledger ledger = Ledger.open(folder, Workbench::starter)) {
            assertThat(pinned.keySet()).isEqualTo(library.keySet());
            pinned.forEach((key, revision) ->
                    assertThat(ledger.materials().card(key, revision)).contains(library.get(key)));
        }
    }
}
