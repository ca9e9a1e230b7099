package stillroom.formulary.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.evaluation.Surface;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.StarterLibrary;
import stillroom.formulary.quantity.Interval;

class SurfaceTest {
    private static final MaterialBook LIBRARY = StarterLibrary.load();

    private static Surface surface(double ph, String... pairs) {
        Brief brief = new Brief(
                ProductType.SHAMPOO,
                Set.of(Brief.People.ADULTS),
                "",
                "",
                Optional.of(Interval.point(ph)),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                "",
                "EU");
        return Bench.EVALUATOR.surface(Subjects.of(Bench.formula(pairs), brief), LIBRARY, Bench.TODAY);
    }

    private static Interval charge(Surface surface, String substance) {
        return known(surface.charges().stream()
                .filter(line -> line.substance().equals(substance))
                .findFirst()
                .orElseThrow()
                .millimolPerKilogram());
    }

    private static <T> T known(Outcome<T> outcome) {
        return outcome.match(one -> one, because -> {
            throw new AssertionError(because);
        });
    }

    private static String why(Outcome<?> outcome) {
        return outcome.match(one -> "known: " + one, because -> because);
    }

    /** 1 mol of charge in 288.378 g of sodium lauryl sulfate (IUPAC 2021): 34.7 mmol/kg at 1 %; a betaine adds none at pH 5.5. */
    @Test
    void anionicsCountInFullAndBetainesByThePh() {
        Surface neutral = surface(5.5, "water-purified", "q.s.", "sles-70", "10", "cocamidopropyl-betaine-30", "10");
        assertThat(charge(neutral, "sodium-laureth-sulfate").middle()).isEqualTo(-1000 * 0.07 * 2.6, within(6.0));
        assertThat(charge(neutral, "cocamidopropyl-betaine").high()).isBetween(0.0, 1.0);
        Surface acid = surface(2.4, "water-purified", "q.s.", "sles-70", "10", "cocamidopropyl-betaine-30", "10");
        // 3 % of 350 g/mol are 86 mmol/kg; around its constant from a fifth to four fifths are protonated.
        assertThat(charge(acid, "cocamidopropyl-betaine").low()).isBetween(10.0, 30.0);
        assertThat(charge(acid, "cocamidopropyl-betaine").high()).isBetween(55.0, 80.0);
        assertThat(known(acid.netCharge()).high())
                .isGreaterThan(known(neutral.netCharge()).high());
    }

    @Test
    void saltsAreNotCountedAndAMissingFigureIsNamed() {
        Surface salted = surface(5.5, "water-purified", "q.s.", "sles-70", "10", "sodium-chloride", "3");
        assertThat(salted.charges()).extracting(Surface.Charge::substance).containsExactly("sodium-laureth-sulfate");
        Surface gum = surface(5.5, "water-purified", "q.s.", "lecithin", "2");
        assertThat(why(gum.netCharge())).contains("no charge figure for").contains("Lecithin");
    }

    /** Polysorbate 60 and sorbitan stearate 52 to 48 make 10 (recomputed from 14.9 and 4.7). */
    @Test
    void hlbWhereItApplies() {
        Surface blend = surface(
                6,
                "water-purified",
                "q.s.",
                "sunflower-oil",
                "20",
                "polysorbate-60",
                "2.08",
                "sorbitan-stearate",
                "1.92");
        Figure hlb = known(blend.hlb());
        assertThat(hlb.value()).isEqualTo(10.0, within(0.1));
        assertThat(known(blend.requiredHlb()).value()).isEqualTo(7, within(0.01));
        Surface ionic = surface(6, "water-purified", "q.s.", "sunflower-oil", "20", "sles-70", "5");
        assertThat(why(ionic.hlb())).startsWith("does not apply").contains("ionic");
        assertThat(why(surface(6, "water-purified", "q.s.").hlb())).contains("no emulsifier");
    }

    @Test
    void oilsWithoutAFigureAreNamedAndTooManyMakeItUnknown() {
        assertThat(why(surface(6, "water-purified", "q.s.", "argan-oil", "10", "sunflower-oil", "5")
                        .requiredHlb()))
                .contains("Argania")
                .contains("of the oil phase");
        assertThat(known(surface(6, "water-purified", "q.s.", "argan-oil", "1", "sunflower-oil", "9")
                                .requiredHlb())
                        .method())
                .contains("without Argania");
    }

    /** The four parts make the whole. */
    @Test
    void phasesAddUp() {
        Surface all = surface(
                5,
                "water-purified",
                "q.s.",
                "sunflower-oil",
                "12",
                "cetearyl-alcohol",
                "3",
                "polysorbate-60",
                "2",
                "xanthan-gum",
                "0.3",
                "glycerin-99",
                "5");
        assertThat(all.phases().stream().mapToDouble(Figure::value).sum()).isEqualTo(100, within(0.01));
        assertThat(all.phases().get(0).value()).isEqualTo(15, within(0.2));
        assertThat(why(all.mildness())).contains("no recorded source");
    }
}
