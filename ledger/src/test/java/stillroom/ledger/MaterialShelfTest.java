package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;

final class MaterialShelfTest {
    @TempDir
    Path folder;

    @Test
    void anOwnCardCoversTheStarterCardAndBothStayToBeSeen() {
        try (Ledger ledger = Workbench.open(folder)) {
            assertThat(ledger.materials().own()).isEmpty();
            Material starter = ledger.materials().book().material("water").orElseThrow();
            Material mine =
                    Workbench.done(ledger.materials().save(Material.named("water", "Boiled water", Family.WATER)));
            assertThat(mine.revision()).isEqualTo(2);
            assertThat(ledger.materials().book().material("water")).contains(mine);
            assertThat(ledger.materials().card("water", 1)).contains(starter);
            assertThat(ledger.materials().revisions("water")).containsExactly(mine);
            assertThat(ledger.materials().own()).containsExactly(mine);
        }
    }

    @Test
    void theSecondOfTwoTabsIsToldWhatStandsNow() {
        try (Ledger ledger = Workbench.open(folder)) {
            Material card = Material.named("clay", "White clay", Family.POWDER).withRevision(0);
            Material first = Workbench.done(ledger.materials().save(card));
            assertThat(first.revision()).isEqualTo(1);
            assertThat(Workbench.stale(ledger.materials().save(card))).isEqualTo(first);
            Material second = Workbench.done(ledger.materials().save(first));
            assertThat(Workbench.stale(ledger.materials().save(first))).isEqualTo(second);
            assertThat(ledger.materials().revisions("clay")).containsExactly(first, second);
        }
    }

    @Test
    void aBookDoesNotChangeUnderAComputation() {
        try (Ledger ledger = Workbench.open(folder)) {
            MaterialBook book = ledger.materials().book();
            Optional<Material> before = book.material("water");
            Workbench.done(ledger.materials().save(Material.named("water", "Boiled water", Family.WATER)));
            assertThat(book.material("water")).isEqualTo(before);
            assertThat(ledger.materials().book().material("water")).isNotEqualTo(before);
        }
    }

    @Test
    void aBookListsEachCardOnceAtTheRevisionThatItMeans() {
        try (Ledger ledger = Workbench.open(folder)) {
            Material first =
                    Workbench.done(ledger.materials().save(Material.named("water", "Well water", Family.WATER)));
            Material second = Workbench.done(ledger.materials().save(first));
            assertThat(ledger.materials().book().materials())
                    .extracting(Material::key)
                    .containsExactly("glycerin", "water");
            assertThat(ledger.materials().book().materials()).contains(second).doesNotContain(first);
            assertThat(ledger.materials()
                            .book(Map.of("water", first.revision()))
                            .materials())
                    .contains(first)
                    .doesNotContain(second);
        }
    }

    @Test
    void theNewestOwnSubstanceIsCurrent() {
        try (Ledger ledger = Workbench.open(folder)) {
            ledger.materials().save(substance("Old Name"));
            ledger.materials().save(substance("New Name"));
            assertThat(ledger.materials().ownSubstances()).containsExactly(substance("New Name"));
            assertThat(ledger.materials().book().substance("x")).contains(substance("New Name"));
            assertThat(ledger.materials().book().substance("y")).isEmpty();
        }
    }

    private static Substance substance(String inci) {
        return new Substance(
                "x",
                inci,
                List.of(),
                Optional.empty(),
                ChargeClass.NONE,
                false,
                Optional.empty(),
                List.of(),
                "from memory");
    }
}
