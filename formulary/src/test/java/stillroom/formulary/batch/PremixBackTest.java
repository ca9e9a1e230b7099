package stillroom.formulary.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static stillroom.formulary.plan.Workbench.g;
import static stillroom.formulary.plan.Workbench.line;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.material.CardsInstead;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.plan.PremixCard;
import stillroom.formulary.plan.Workbench;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;

class PremixBackTest {
    private static final Formula SERUM = new Formula(List.of(new Phase(
            "a",
            "all",
            List.of(line("w", "water", new Amount.ToHundred()), line("k", "active-1", Amount.fixed("0.02"))),
            List.of())));

    /** A premix of a premix: 10 % of a lot that holds 9.8 % of the active; each carrier is water. */
    private static final MaterialBook LOTS = new CardsInstead(
            Workbench.BOOK, Map.of("premix", card("premix", "active-1", 0.098), "thin", card("thin", "premix", 0.1)));

    @Test
    void theLineHasItsMaterialAgainAndTheCarrierGoesToItsOwnLine() {
        AsMade made = made("premix", "0.2");
        AsMade back = new PremixBack(SERUM, LOTS, Set.of("premix", "thin")).of(made);
        assertThat(back.lines()).hasSize(2);
        assertThat(back.line("k").orElseThrow().materialKey()).isEqualTo("active-1");
        assertThat(back.line("k").orElseThrow().made().value()).isEqualByComparingTo("0.0196");
        assertThat(back.line("w").orElseThrow().made().value()).isEqualByComparingTo("99.9804");
        assertThat(back.line("w").orElseThrow().actual().value()).isEqualByComparingTo("99.9804");
    }

    @Test
    void aPremixOfAPremixIsOpenedInTurn() {
        AsMade back = new PremixBack(SERUM, LOTS, Set.of("premix", "thin")).of(made("thin", "2"));
        assertThat(back.line("k").orElseThrow().made().value()).isEqualByComparingTo("0.0196");
        assertThat(back.lines().stream().map(line -> line.made().value()).reduce((a, b) -> a.add(b)))
                .hasValueSatisfying(sum -> assertThat(sum).isEqualByComparingTo("100"));
    }

    /** Carried into a formula, no line is a premix, and the line that filled up to 100 does so still. */
    @Test
    void theCarriedFormulaHasNoPremix() {
        AsMade back = new PremixBack(SERUM, LOTS, Set.of("premix")).of(made("premix", "0.2"));
        Formula carried = new CarriedFormula(back, SERUM, BatchState.of(List.of()), Workbench.BOOK).at(3);
        assertThat(carried.line("k").orElseThrow().materialKey()).isEqualTo("active-1");
        assertThat(carried.line("k").orElseThrow().amount()).isEqualTo(Amount.fixed("0.020"));
        assertThat(carried.line("w").orElseThrow().amount()).isInstanceOf(Amount.ToHundred.class);
        assertThat(carried.lines()).hasSize(2);
    }

    @Test
    void aPremixThatTheFormulaAsksForStays() {
        Formula asking = new Formula(
                List.of(new Phase("a", "all", List.of(line("k", "premix", Amount.fixed("0.2"))), List.of())));
        AsMade made = made("premix", "0.2");
        assertThat(new PremixBack(asking, LOTS, Set.of("premix")).of(made).lines())
                .isEqualTo(made.lines());
    }

    private static Material card(String key, String concentrate, double share) {
        return Material.named(key, key, Family.ACTIVE)
                .withComposition(PremixCard.composition(concentrate, "water", share)
                        .toArray(stillroom.formulary.material.Constituent[]::new));
    }

    private static AsMade made(String premix, String percent) {
        Percent share = Percent.of(percent);
        return new AsMade(
                List.of(madeLine("w", "water", Percent.HUNDRED.minus(share)), madeLine("k", premix, share)),
                List.of(),
                g("100"),
                g("100"),
                new Evaporated(Grams.ZERO, true, ""),
                List.of());
    }

    private static MadeLine madeLine(String id, String key, Percent share) {
        return new MadeLine(
                id,
                "a",
                key,
                Optional.of(new Grams(share.value())),
                Optional.of(g("0.1")),
                Optional.of(share),
                new Grams(share.value()),
                share,
                false);
    }
}
