package stillroom.formulary.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Finding;
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
