package stillroom.desk.demonstration;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.judgement.Evaluator;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.StarterLibrary;

/** People copy what a program shows them, so the invented formulas have to be sound. */
class InventedFormulasTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final MaterialBook BOOK = StarterLibrary.load();
    private static final Evaluator EVALUATOR = Evaluator.standard();

    static Stream<Arguments> formulas() {
        return Stream.of(
                Arguments.of("hand wash, first", HandWash.brief(), HandWash.first()),
                Arguments.of("hand wash", HandWash.brief(), HandWash.second()),
                Arguments.of("hand lotion", HandLotion.brief(), HandLotion.formula()),
                Arguments.of("toner", LacticToner.brief(), LacticToner.formula()),
                Arguments.of("conditioner", HairConditioner.brief(), HairConditioner.formula()),
                Arguments.of("balm", CalendulaBalm.brief(), CalendulaBalm.formula()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("formulas")
    void formulasAreWithoutBreachOrProbableFault(String name, Brief brief, Formula formula) {
        Evaluation evaluation = EVALUATOR.evaluate(Subjects.of(formula, brief), BOOK, DAY);
        assertThat(evaluation.warnings()).isEmpty();
        assertThat(evaluation.composition().unknown()).isEmpty();
        assertThat(evaluation.figures().totalPercent().value()).isEqualTo(100.0);
    }

    /** The band is the maker's wish; the expected pH has to reach it with the acid at its expected amount. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("formulas")
    void expectedPhLiesInTheBand(String name, Brief brief, Formula formula) {
        if (brief.phBand().isEmpty()) {
            return;
        }
        Figure ph = EVALUATOR
                .evaluate(Subjects.of(formula, brief), BOOK, DAY)
                .figures()
                .ph()
                .match(known -> known, because -> {
                    throw new AssertionError(name + ": " + because);
                });
        assertThat(brief.phBand().get().contains(ph.value()))
                .as(name + " at " + ph)
                .isTrue();
    }
}
