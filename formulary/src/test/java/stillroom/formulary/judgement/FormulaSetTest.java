package stillroom.formulary.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.PriceBook;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.StarterLibrary;

/** Whole formulas of the starter library: sound ones draw no warning, wrong ones exactly those expected. */
class FormulaSetTest {
    private static final MaterialBook LIBRARY = StarterLibrary.load();

    static List<FormulaFile.Case> sound() {
        return FormulaFile.read("/formulas/sound.txt");
    }

    static List<FormulaFile.Case> wrong() {
        return FormulaFile.read("/formulas/wrong.txt");
    }

    @ParameterizedTest
    @MethodSource("sound")
    void soundFormulasDrawNoWarning(FormulaFile.Case one) {
        Evaluation judged = judge(one);
        assertThat(judged.warnings().stream().map(finding -> finding.rule() + ": " + finding.says()))
                .isEmpty();
        assertThat(judged.composition().unknown()).isEmpty();
        assertThat(judged.findings().stream().map(Finding::rule).toList()).containsAll(one.also());
    }

    @ParameterizedTest
    @MethodSource("wrong")
    void wrongFormulasDrawExactlyTheirWarnings(FormulaFile.Case one) {
        Evaluation judged = judge(one);
        TreeSet<String> drawn =
                new TreeSet<>(judged.warnings().stream().map(Finding::rule).toList());
        assertThat(drawn)
                .as(judged.warnings().stream()
                        .map(finding -> finding.rule() + ": " + finding.says())
                        .toList()
                        .toString())
                .isEqualTo(one.expected());
        assertThat(judged.findings().stream().map(Finding::rule).toList()).containsAll(one.also());
    }

    /** What is asked once for two days must be what each day says by itself, on days far apart. */
    @Test
    void twoDaysInOnePotAreTheTwoJudgements() {
        LocalDate early = LocalDate.of(2001, 1, 1);
        LocalDate late = LocalDate.of(2101, 1, 1);
        int compared = 0;
        for (List<FormulaFile.Case> set : List.of(sound(), wrong())) {
            for (FormulaFile.Case one : set) {
                MaterialBook book = one.book(LIBRARY);
                Pot pot = Pot.open(one.subject(), book, PriceBook.ofCards(book), Bench.EVALUATOR.rules(), early);
                Evaluator.TwoDays found = Bench.EVALUATOR.findings(pot, late);
                assertThat(found.earlier())
                        .as(one.name())
                        .isEqualTo(Bench.EVALUATOR
                                .evaluate(one.subject(), book, early)
                                .findings());
                assertThat(found.later())
                        .as(one.name())
                        .isEqualTo(Bench.EVALUATOR
                                .evaluate(one.subject(), book, late)
                                .findings());
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(100);
    }

    @Test
    void theSetsAreLargeEnoughToMeanSomething() {
        assertThat(sound()).hasSizeGreaterThanOrEqualTo(20);
        assertThat(wrong()).hasSizeGreaterThanOrEqualTo(40);
        assertThat(wrong())
                .allSatisfy(one -> assertThat(one.expected().size() + one.also().size())
                        .as(one.name())
                        .isPositive());
    }

    private static Evaluation judge(FormulaFile.Case one) {
        return Bench.EVALUATOR.evaluate(one.subject(), one.book(LIBRARY), one.asOf());
    }
}
