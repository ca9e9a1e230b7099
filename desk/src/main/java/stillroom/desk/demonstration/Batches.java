package stillroom.desk.demonstration;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.quantity.Grams;

/** The invented batches, each at another stage; all times count back from now. */
record Batches(Desk desk, Instant now) {
    private static final Map<String, String> PH_METER = Equipment.readWith();
    /** Invented: grams of lactic acid diluted to 5 %, and the pH of 50 g of toner with it. */
    private static final List<List<String>> TONER_CURVE = List.of(
            List.of("0", "6.84"),
            List.of("0.20", "5.66"),
            List.of("0.35", "5.40"),
            List.of("0.50", "5.24"),
            List.of("0.65", "5.12"));

    private static final Map<String, String> VISCOMETER = Map.of(
            "instrument", "rotational viscometer",
            "spindle", "R3",
            "speed", "20 rpm",
            "sample temperature", "22 °C",
            "seconds", "60");

    /** Made twelve days ago, filled, read again over days, released. */
    void handWash(FormulaVersion version) {
        String kettle = Equipment.KETTLE;
        Instant morning = now.minus(Duration.ofDays(12));
        BenchDay bench = BenchDay.plan(desk, version, Grams.of("1500"), morning, Saltmarsh.FIRST)
                .write(new BatchEvent.Begun("Bench wiped down, scales level."))
                .ready(kettle, "412.3", "3000", "a", "b", "c")
                .weighAll(kettle, "a")
                .step(kettle, "a-s1")
                .weighAll(kettle, "b")
                .step(kettle, "b-s1")
                .weighAll(kettle, "c")
                .step(kettle, "c-s1")
                .correct(kettle, "c2", "2.63", Purpose.CORRECTION_ACID)
                .sample(kettle, "8.0", "pH sample")
                .read(ReadingKind.PH, kettle, 5.24, "pH", PH_METER)
                .correct(kettle, "c2", "1.10", Purpose.CORRECTION_ACID)
                .sample(kettle, "8.0", "pH sample")
                .read(ReadingKind.PH, kettle, 4.93, "pH", PH_METER)
                .step(kettle, "c-s2")
                .correct(kettle, "c3", "12.0", Purpose.CORRECTION_THICKENER)
                .correct(kettle, "c3", "5.6", Purpose.CORRECTION_THICKENER)
                .step(kettle, "c-s3")
                .read(ReadingKind.VISCOSITY, kettle, 2900, "mPa s", VISCOMETER)
                .weighBack(kettle, "3.6")
                .step(kettle, "c-s4")
                .write(new BatchEvent.RestBegun(
                        morning.plus(Duration.ofHours(23)), "Clear, no foam on top; pH and thickness again."));
        fillHandWash(bench, kettle, morning.plus(Duration.ofDays(1)));
        bench.at(morning.plus(Duration.ofDays(3)))
                .read(ReadingKind.PH, "", 4.96, "pH", PH_METER)
                .look("", "clear, pale straw, scent as on the first day")
                .at(morning.plus(Duration.ofDays(8)))
                .read(ReadingKind.PH, "", 4.95, "pH", PH_METER)
                .read(ReadingKind.VISCOSITY, "", 3400, "mPa s", VISCOMETER)
                .after(Duration.ofMinutes(30))
                .write(new BatchEvent.Decided(
                        BatchEvent.Decision.RELEASED, Saltmarsh.FIRST, "Readings steady over a week.", List.of()));
        new Afterwards(desk, now).released(bench);
    }

    private void fillHandWash(BenchDay bench, String kettle, Instant nextDay) {
        bench.at(nextDay)
                .by(Saltmarsh.SECOND)
                .write(new BatchEvent.RestEnded("Clear, foam gone."))
                .sample(kettle, "8.0", "pH sample")
                .read(ReadingKind.PH, kettle, 4.97, "pH", PH_METER)
                .read(ReadingKind.VISCOSITY, kettle, 3350, "mPa s", VISCOMETER)
                .look(kettle, "clear, pale straw")
                .write(new BatchEvent.Filled(
                        kettle,
                        Equipment.PUMP_BOTTLE,
                        5,
                        Grams.of("1287.5"),
                        Optional.of(Grams.of("120.0")),
                        "257.5 g each, two retained samples of 60 g",
                        Optional.of(Equipment.PUMP_LOT)));
        new Afterwards(desk, now).filled(bench);
        bench.by(Saltmarsh.FIRST);
    }

    /** Made yesterday; its next-day check is due. */
    void toner(FormulaVersion version) {
        String beaker = Equipment.LARGE_BEAKER;
        Instant start = now.minus(Duration.ofHours(22));
        BenchDay.plan(desk, version, Grams.of("600"), start, Saltmarsh.FIRST)
                .write(new BatchEvent.Begun(""))
                .ready(beaker, "310.42", "1000", "a", "c")
                .weighAll(beaker, "a")
                .step(beaker, "a-s1")
                .ready("Small beaker", "48.15", "100", "b")
                .weighAll("Small beaker", "b")
                .write(new BatchEvent.Combined("Small beaker", beaker, Optional.of(21.0), Optional.of(21.0)))
                .step(beaker, "b-s1")
                .read(ReadingKind.PH, beaker, 6.84, "pH", PH_METER)
                .titrate(beaker, "c1", "50.00", TONER_CURVE)
                .correct(beaker, "c1", "0.25", Purpose.CORRECTION_ACID)
                .read(ReadingKind.PH, beaker, 5.31, "pH", PH_METER)
                .correct(beaker, "c1", "0.09", Purpose.CORRECTION_ACID)
                .read(ReadingKind.PH, beaker, 5.19, "pH", PH_METER)
                .step(beaker, "c-s1")
                .write(new BatchEvent.RestBegun(
                        now.minus(Duration.ofMinutes(30)), "pH again: the lactic acid opens slowly. Still clear?"));
    }

    /** On the bench now: the water phase swells, the oil phase is half weighed. */
    void lotion(FormulaVersion version) {
        String water = Equipment.LARGE_BEAKER;
        String oil = Equipment.BEAKER;
        BenchDay.plan(desk, version, Grams.of("500"), now.minus(Duration.ofMinutes(75)), Saltmarsh.FIRST)
                .write(new BatchEvent.Begun(""))
                .ready(water, "311.06", "1000", "a", "c")
                .ready(oil, "142.37", "400", "b")
                .weighAll(water, "a")
                .step(water, "a-s1")
                .read(ReadingKind.TEMPERATURE, water, 34, "°C", Map.of())
                .weigh(oil, "b1")
                .weigh(oil, "b2")
                .weigh(oil, "b3");
    }

    /** Planned only, and the shelf lacks something for it. */
    void conditioner(FormulaVersion version) {
        BenchDay.plan(desk, version, Grams.of("2000"), now.minus(Duration.ofMinutes(10)), Saltmarsh.FIRST);
    }
}
