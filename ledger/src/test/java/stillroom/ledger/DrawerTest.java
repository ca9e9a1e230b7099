package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.ledger.document.Drawer;

final class DrawerTest {
    @TempDir
    Path folder;

    record Slip(String words, List<Integer> figures) {}

    @Test
    void whatIsPutInComesOutByKindAndKeyAfterOpeningAgain() {
        Slip first = new Slip("one", List.of(1, 2));
        Slip second = new Slip("two", List.of());
        try (Ledger ledger = Workbench.open(folder)) {
            Drawer<Slip> slips = ledger.drawer("slip", Slip.class);
            slips.write("b", first);
            slips.write("b", second);
            slips.write("a", first);
            ledger.drawer("other", Slip.class).write("a", second);
        }
        try (Ledger ledger = Workbench.open(folder)) {
            Drawer<Slip> slips = ledger.drawer("slip", Slip.class);
            assertThat(slips.list()).containsExactly(first, second);
            slips.remove("a");
            assertThat(slips.read("a")).isEmpty();
            assertThat(slips.all()).containsOnlyKeys("b");
            assertThat(ledger.drawer("other", Slip.class).read("a")).contains(second);
        }
    }
}
