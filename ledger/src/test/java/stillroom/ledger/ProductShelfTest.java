package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.ledger.formula.VersionKey;

final class ProductShelfTest {
    @TempDir
    Path folder;

    @Test
    void theSecondOfTwoTabsIsToldWhatStandsNow() {
        try (Ledger ledger = Workbench.open(folder)) {
            long id = draft(ledger);
            FormulaVersion saved =
                    Workbench.done(ledger.products().saveDraft(id, 1, 1, Workbench.formula("6"), "one tab"));
            assertThat(saved.edit()).isEqualTo(2);
            assertThat(Workbench.stale(ledger.products().saveDraft(id, 1, 1, Workbench.formula("7"), "the other")))
                    .isEqualTo(saved);
            assertThat(Workbench.stale(ledger.products().keep(id, 1, 1))).isEqualTo(saved);
            assertThat(ledger.products().version(id, 1)).contains(saved);
        }
    }

    private static long draft(Ledger ledger) {
        Product product = Workbench.product(ledger);
        ledger.products()
                .newVersion(product.id(), Optional.empty(), Workbench.formula("5"), "first", Workbench.MORNING);
        return product.id();
    }

    @Test
    void aKeptVersionNeverChangesAgain() {
        try (Ledger ledger = Workbench.open(folder)) {
            FormulaVersion kept = Workbench.keptVersion(ledger);
            assertThat(Workbench.stale(ledger.products()
                            .saveDraft(kept.productId(), 1, kept.edit(), Workbench.formula("6"), "later")))
                    .isEqualTo(kept);
            assertThat(Workbench.done(ledger.products().keep(kept.productId(), 1, kept.edit())))
                    .isEqualTo(kept);
        }
    }

    @Test
    void keepingPinsTheCardsThatAreMeant() {
        try (Ledger ledger = Workbench.open(folder)) {
            Material own = Material.named("glycerin", "My glycerin", Family.HUMECTANT);
            Material first = Workbench.done(ledger.materials().save(own));
            FormulaVersion kept = Workbench.keptVersion(ledger);
            Workbench.done(ledger.materials().save(first));
            assertThat(kept.cards()).isEqualTo(Map.of("water", 1, "glycerin", first.revision()));
            assertThat(ledger.materials().book(kept.cards()).material("glycerin"))
                    .contains(first);
            assertThat(ledger.materials()
                            .book()
                            .material("glycerin")
                            .orElseThrow()
                            .revision())
                    .isEqualTo(first.revision() + 1);
        }
    }

    @Test
    void aLaterEditionOfTheStarterLibraryChangesNoKeptVersion() {
        FormulaVersion kept;
        try (Ledger ledger = Workbench.open(folder)) {
            kept = Workbench.keptVersion(ledger);
        }
        Material renamed = Material.named("water", "Aqua, edition two", Family.WATER);
        try (Ledger ledger = Ledger.open(folder, () -> Workbench.starter(renamed))) {
            assertThat(ledger.materials()
                            .book(kept.cards())
                            .material("water")
                            .orElseThrow()
                            .name())
                    .isEqualTo("Water");
            assertThat(ledger.materials().book().material("water")).contains(renamed);
            FormulaVersion later = Workbench.keptVersion(ledger);
            assertThat(later.cards()).isEqualTo(Map.of("water", 2));
            assertThat(ledger.materials()
                            .book(later.cards())
                            .material("water")
                            .orElseThrow()
                            .name())
                    .isEqualTo("Aqua, edition two");
        }
    }

    @Test
    void versionsAreNumberedAndFoundByMaterial() {
        try (Ledger ledger = Workbench.open(folder)) {
            long id = draft(ledger);
            ledger.products().newVersion(id, Optional.of(1), Workbench.formula("9"), "more", Workbench.MORNING);
            assertThat(ledger.products().newest(id).orElseThrow().number()).isEqualTo(2);
            assertThat(ledger.products().withMaterial("glycerin"))
                    .containsExactly(new VersionKey(id, 2), new VersionKey(id, 1));
            Workbench.done(ledger.products().saveDraft(id, 2, 1, Formula.EMPTY, ""));
            assertThat(ledger.products().withMaterial("glycerin")).containsExactly(new VersionKey(id, 1));
        }
    }

    @Test
    void unknownProductsAndVersionsAreRefused() {
        try (Ledger ledger = Workbench.open(folder)) {
            Product product = Workbench.product(ledger);
            assertThat(ledger.products().version(product.id(), 1)).isEmpty();
            assertThatThrownBy(() -> ledger.products()
                            .newVersion(99, Optional.empty(), Workbench.formula("5"), "", Workbench.MORNING))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> ledger.products().keep(product.id(), 7, 1))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> ledger.products().change(new Product(99, "x", product.brief(), "")))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }
}
