package stillroom.formulary.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static stillroom.formulary.plan.Workbench.g;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.material.StarterLibrary;
import stillroom.formulary.plan.Workbench;

/** The bench with the starter library's real cards. */
class StarterBenchTest {
    private static final StarterLibrary BOOK = StarterLibrary.load();

    @Test
    void lossFromWaterAndABalmIsToldApart() {
        Evaporated water = weighedBack("water-purified", "glycerin-99");
        assertThat(water.asWater()).isTrue();
        Evaporated alcohol = weighedBack("water-purified", "ethanol-96");
        assertThat(alcohol.asWater()).isFalse();
        assertThat(alcohol.says()).contains("Ethanol");
        Evaporated balm = weighedBack("beeswax-white", "jojoba-oil");
        assertThat(balm.asWater()).isFalse();
        assertThat(balm.says()).contains("no material is known to bring any");
        Evaporated unknown = weighedBack("water-purified", "powder-from-a-friend");
        assertThat(unknown.asWater()).isFalse();
        assertThat(unknown.says()).contains("not known");
    }

    @Test
    void tooHotAndFireAreSaidBeforeThePour() {
        Vessel warm = LogWriter.toner()
                .pour("beaker", "w", "water", "954")
                .step("beaker", "a1", 62.4)
                .state()
                .vessel("beaker")
                .orElseThrow();
        assertThat(cautions(warm, "aloe-juice")).contains("Wait: 62 °C, limit 50 °C.");
        assertThat(cautions(warm, "ethanol-96")).anyMatch(says -> says.startsWith("Fire: alcohol into a warm vessel."));
        assertThat(cautions(warm, "glycerin-99")).noneMatch(says -> says.startsWith("Fire") || says.startsWith("Wait"));
    }

    @Test
    void aPourHotterThanTheMaterialBearsNeedsAReason() {
        LogWriter log = LogWriter.toner().pour("beaker", "w", "water", "954").step("beaker", "a1", 62.4);
        assertThat(BatchRules.problems(log.state(), aloe(""), FACTS))
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.field()).isEqualTo("note");
                    assertThat(problem.sentence()).contains("beaker was last seen at 62 °C, and this bears 50 °C");
                });
        assertThat(BatchRules.problems(log.state(), aloe("its gel is wanted stiff"), FACTS))
                .isEmpty();

        log.add(aloe(""));
        assertThat(deviations(log)).endsWith(", aloe-juice (poured at 62 °C, limit 50 °C).");
        assertThat(deviations(new LogWriter().vessel("beaker").add(aloe("")))).startsWith("Every deviation");
        log.add(new BatchEvent.Struck(log.log().size(), "the wrong bottle"))
                .step("beaker", "a1", 45)
                .add(aloe(""));
        assertThat(deviations(log)).doesNotContain("aloe");
    }

    private static final BenchFacts FACTS = new BenchFacts(List.of(), List.of(), BOOK, Workbench.TODAY);

    private static BatchEvent aloe(String note) {
        return new BatchEvent.Poured(
                "beaker",
                Optional.empty(),
                "aloe-juice",
                Optional.empty(),
                g("20"),
                Purpose.CORRECTION_OTHER,
                "bench balance",
                "",
                note);
    }

    private static String deviations(LogWriter log) {
        BatchState state = log.state();
        AsMade made = AsMade.of(state, Formula.EMPTY, BOOK);
        Brief brief = Brief.of(ProductType.TONER);
        return ReleaseGate.of(state, made, Formula.EMPTY, brief, List.of(), List.of()).stream()
                .filter(gate -> gate.name().equals("deviations"))
                .map(ReleaseGate::says)
                .collect(Collectors.joining());
    }

    @Test
    void noRoomInTheVesselIsSaid() {
        Vessel vessel = new LogWriter()
                .add(new BatchEvent.VesselReady("jug", Optional.empty(), Optional.of(g("500")), "washed", List.of()))
                .pour("jug", "", "water-purified", "480")
                .state()
                .vessel("jug")
                .orElseThrow();
        assertThat(cautions(vessel, "glycerin-99")).contains("jug holds 500 g; with this it would be 530 g.");
    }

    private static List<String> cautions(Vessel vessel, String key) {
        return PourCautions.of(vessel, BOOK.material(key).orElseThrow(), g("50"), BOOK);
    }

    private static Evaporated weighedBack(String first, String second) {
        BatchState state = new LogWriter()
                .vessel("pot")
                .pour("pot", "", first, g("100"), Purpose.LINE)
                .pour("pot", "", second, g("100"), Purpose.LINE)
                .add(new BatchEvent.VesselWeighed("pot", g("490")))
                .state();
        return AsMade.of(state, Formula.EMPTY, BOOK).evaporated();
    }
}
