package stillroom.formulary.reformulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.quantity.PercentRange;
import stillroom.science.blend.Patience;

/** What is dosed for its effect and not for its mass: a preservative, an acid, a gum. */
class StandInTest {
    private static List<Answer> wash(String gone) {
        return new Reformulation(ReformulationTest.recast(), ReformulationTest.shelf(400), Patience.ENDLESS)
                .solve(Wish.without(gone))
                .answers();
    }

    private static List<Line> newcomers(Answer answer) {
        return answer.formula().lines().stream()
                .filter(line -> line.id().startsWith("new-"))
                .toList();
    }

    private static Material card(Line line) {
        return Lotion.BOOK.material(line.materialKey()).orElseThrow();
    }

    /** Both preservatives gone: another one for each, and not one material twice. */
    @Test
    void twoThatGoHaveAStandInEach() {
        Wish neither = Wish.without("sodium-benzoate", "potassium-sorbate");
        Result result = new Reformulation(ReformulationTest.recast(), ReformulationTest.shelf(400), Patience.ENDLESS)
                .solve(neither);
        assertThat(result.answers()).isNotEmpty();
        for (Answer answer : result.answers()) {
            assertThat(answer.disagreements()).isEmpty();
            assertThat(answer.formula().lines())
                    .noneMatch(line -> neither.without().contains(line.materialKey()));
            List<String> preservatives = newcomers(answer).stream()
                    .filter(line -> card(line).family() == Family.PRESERVATIVE)
                    .map(Line::materialKey)
                    .toList();
            assertThat(preservatives).hasSize(2).doesNotHaveDuplicates();
        }
        List<String> withs = result.answers().stream()
                .map(answer -> newcomers(answer).stream()
                        .map(Line::materialKey)
                        .sorted()
                        .toList()
                        .toString())
                .toList();
        assertThat(withs).as("really different answers").doesNotHaveDuplicates();
    }

    /** The anionic and the amphoteric surfactant gone: the active matter of both classes stays within its band. */
    @Test
    void twoSurfactantsGoAndBothClassesStay() {
        Answer answer = new Reformulation(ReformulationTest.recast(), ReformulationTest.shelf(400), Patience.ENDLESS)
                .solve(Wish.without("sles-27", "cocamidopropyl-betaine-30"))
                .answers()
                .get(0);
        assertThat(answer.disagreements()).isEmpty();
        for (String matter : List.of("Anionic active matter", "Amphoteric active matter")) {
            Answer.Compared figure = answer.figures().stream()
                    .filter(each -> each.name().equals(matter))
                    .findFirst()
                    .orElseThrow();
            assertThat(figure.after()).isBetween(0.9 * figure.before() - 2e-3, 1.1 * figure.before() + 2e-3);
        }
    }

    /** Sodium benzoate 0.45 % stands at (0.45 - 0.2) / (0.59 - 0.2) = 0.641 of its range; the other does too, at 80 to 120 %. */
    @Test
    void onePreservativeStandsInAtTheSamePlaceInItsRange() {
        List<Answer> answers = wash("sodium-benzoate");
        assertThat(answers).hasSize(3);
        for (Answer answer : answers) {
            assertThat(answer.disagreements()).isEmpty();
            assertThat(answer.reproaches()).as("keeps, at its pH").isEmpty();
            List<Line> preservatives = newcomers(answer).stream()
                    .filter(line -> card(line).family() == Family.PRESERVATIVE)
                    .toList();
            assertThat(preservatives).hasSize(1);
            PercentRange range = card(preservatives.get(0)).usage().orElseThrow();
            double low = range.low().value().doubleValue();
            double high = range.high().value().doubleValue();
            double dose = ((Amount.Fixed) preservatives.get(0).amount())
                    .percent()
                    .value()
                    .doubleValue();
            assertThat(dose).isBetween(low, high);
            assertThat(dose).isCloseTo(low + 0.641 * (high - low), within(0.2 * high));
            // The sorbate that stays is neither moved nor brought a second time.
            assertThat(answer.formula().line("k"))
                    .isEqualTo(ReformulationTest.handWash().line("k"));
            assertThat(preservatives.get(0).materialKey()).isNotIn("sorbic-acid", "benzoate-sorbate-solution");
        }
    }

    /** Citric acid 50 % in water is half citric acid: anhydrous, half of 0.25 % gives the same pH, and half of its range. */
    @Test
    void anAcidStandsInByItsPhAndStaysQuantumSatis() {
        Answer answer = wash("citric-acid-50").get(0);
        Line acid = newcomers(answer).get(0);
        assertThat(acid.materialKey()).isEqualTo("citric-acid");
        Amount.ToReading amount = (Amount.ToReading) acid.amount();
        assertThat(amount.reading()).isEqualTo(ReadingKind.PH);
        assertThat(amount.expected().value().doubleValue()).isCloseTo(0.125, within(0.006));
        assertThat(amount.range().low().value().doubleValue()).isCloseTo(0.075, within(0.004));
        assertThat(amount.range().high().value().doubleValue()).isCloseTo(0.2, within(0.01));
        double before = ph(answer, false);
        assertThat(ph(answer, true)).isCloseTo(before, within(0.03));
        assertThat(answer.formula().phases().get(2).lines()).contains(acid);
    }

    private static double ph(Answer answer, boolean after) {
        Optional<Answer.Compared> ph = answer.figures().stream()
                .filter(figure -> figure.name().equals("pH expected"))
                .findFirst();
        return after
                ? answer.evaluation().figures().ph().match(Figure::value, why -> Double.NaN)
                : ph.orElseThrow().before();
    }

    @Test
    void oneGumStandsInForAGum() {
        Result result =
                new Reformulation(Lotion.recast(), Lotion.shelf(), Patience.ENDLESS).solve(Wish.without("xanthan-gum"));
        assertThat(result.answers()).hasSize(3).allSatisfy(answer -> {
            assertThat(newcomers(answer)).hasSize(1);
            assertThat(card(newcomers(answer).get(0)).family()).isEqualTo(Family.THICKENER);
        });
    }

    @Test
    void aCationicStaysOutOfAnAnionicBase() {
        for (String gone : List.of("sles-27", "cocamidopropyl-betaine-30")) {
            assertThat(wash(gone))
                    .isNotEmpty()
                    .allSatisfy(
                            answer -> assertThat(answer.evaluation().figures().activeMatterPercent())
                                    .doesNotContainKey(stillroom.formulary.material.ChargeClass.CATIONIC));
        }
    }

    /** Sodium laureth sulfate as a paste of 70 % for the one of 27 %: 36 x 27.5 / 70 % as the cards have it, and nothing else moves. */
    @Test
    void theTwinComesFirstAndKeepsTheActiveMatterWhereItWas() {
        Answer twin = wash("sles-27").get(0);
        assertThat(newcomers(twin)).extracting(Line::materialKey).containsExactly("sles-70");
        Answer.Compared active = twin.figures().stream()
                .filter(figure -> figure.name().equals("Anionic active matter"))
                .findFirst()
                .orElseThrow();
        assertThat(active.after()).isCloseTo(active.before(), within(0.001));
        assertThat(twin.changes().stream().filter(change -> Math.abs(change.by()) > 5e-4))
                .hasSize(3);
    }

    @Test
    void noHarsherHasNoMoreOfWhatBites() {
        Wish cheap = Wish.of(Goal.LOWEST_COST);
        Reformulation work =
                new Reformulation(ReformulationTest.recast(), ReformulationTest.shelf(400), Patience.ENDLESS);
        Answer free = work.solve(cheap).answers().get(0);
        Answer gentle =
                work.solve(cheap.with(Bands.USUAL.noHarsher(true))).answers().get(0);
        assertThat(figure(free, Requirements.ANIONIC_CHARGE)).isPositive();
        assertThat(figure(gentle, Requirements.ANIONIC_CHARGE)).isNotPositive();
        assertThat(free.harshness()).startsWith("Harsher than now").contains("net anionic charge from ");
        assertThat(gentle.harshness()).matches("(Milder than now|Neither harsher nor milder): .*");
        assertThat(figure(gentle, "Anionic active matter")).isLessThanOrEqualTo(1e-3);
        assertThat(Measure.COST.of(gentle)).isGreaterThanOrEqualTo(Measure.COST.of(free));
    }

    /** By how much a figure rises, as the requirements reckon it. */
    private static double figure(Answer answer, String name) {
        if (name.equals(Requirements.ANIONIC_CHARGE)) {
            return answer.givesUp().stream()
                    .filter(words -> words.startsWith(name + " goes from "))
                    .mapToDouble(words -> {
                        String[] figures =
                                words.replaceAll("[^0-9. ]", "").strip().split("\\s+");
                        return Double.parseDouble(figures[1]) - Double.parseDouble(figures[0]);
                    })
                    .sum();
        }
        return answer.figures().stream()
                .filter(figure -> figure.name().equals(name))
                .mapToDouble(figure -> figure.after() - figure.before())
                .sum();
    }
}
