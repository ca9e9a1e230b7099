package stillroom.desk.batches;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillroom.desk.OpenDesk;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.formula.Step;
import stillroom.formulary.material.Lot;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;
import stillroom.ledger.Ledger;

/** A workshop with two balances, a few lots and a two-vessel lotion; all invented. */
final class LotionBench implements AutoCloseable {
    static final LocalDate TODAY = LocalDate.ofInstant(OpenDesk.NOW, ZoneOffset.UTC);
    static final String WATER = "water-purified";
    static final String GLYCERIN = "glycerin-99";
    static final String OIL = "sunflower-oil";
    static final String EMULSIFIER = "glyceryl-stearate-peg-100";
    static final String PRESERVATIVE = "sodium-benzoate";
    static final String ACID = "lactic-acid-80";

    private final OpenDesk desk;

    private LotionBench(OpenDesk desk) {
        this.desk = desk;
    }

    static LotionBench in(Path folder) {
        LotionBench bench = new LotionBench(OpenDesk.in(folder));
        bench.fill(bench.desk.ledger());
        return bench;
    }

    /** The same folder opened later. */
    static LotionBench later(Path folder, Duration after) {
        return new LotionBench(OpenDesk.at(folder, OpenDesk.NOW.plus(after)));
    }

    private void fill(Ledger ledger) {
        ledger.equipment()
                .writeBalances(List.of(
                        new Balance("Kitchen scale", Grams.of("0.1"), Optional.empty(), Grams.of("3000")),
                        new Balance("Fine scale", Grams.of("0.01"), Optional.empty(), Grams.of("200"))));
        lot("W-1", WATER, "5000", Optional.empty(), Lot.State.RELEASED);
        lot("G-late", GLYCERIN, "500", Optional.of(TODAY.plusDays(300)), Lot.State.RELEASED);
        lot("G-soon", GLYCERIN, "500", Optional.of(TODAY.plusDays(20)), Lot.State.RELEASED);
        lot("G-old", GLYCERIN, "500", Optional.of(TODAY.minusDays(1)), Lot.State.RELEASED);
        lot("O-1", OIL, "40", Optional.of(TODAY.plusDays(90)), Lot.State.RELEASED);
        lot("E-1", EMULSIFIER, "300", Optional.empty(), Lot.State.RELEASED);
        lot("P-1", PRESERVATIVE, "100", Optional.empty(), Lot.State.QUARANTINE);
        lot("A-1", ACID, "100", Optional.empty(), Lot.State.RELEASED);
        Brief brief = new Brief(
                ProductType.HAND_CREAM,
                Set.of(Brief.People.ADULTS),
                "hands",
                "",
                Optional.of(new Interval(4.8, 5.4)),
                Optional.of(5.1),
                Optional.empty(),
                List.of(),
                "tube 50 ml",
                "EU");
        Product product = ledger.products().add("Hand lotion", brief, "");
        ledger.products().newVersion(product.id(), Optional.empty(), formula(), "first", OpenDesk.NOW);
    }

    private void lot(String code, String material, String grams, Optional<LocalDate> expires, Lot.State state) {
        desk.ledger()
                .lots()
                .add(new Lot(
                        code,
                        material,
                        "",
                        "Invented supplier",
                        Grams.of(grams),
                        TODAY.minusDays(30),
                        Optional.empty(),
                        expires,
                        Optional.empty(),
                        state,
                        ""));
    }

    static Formula formula() {
        return new Formula(List.of(
                new Phase(
                        "water",
                        "Water phase",
                        List.of(
                                new Line("l1", WATER, new Amount.ToHundred(), ""),
                                new Line("l2", GLYCERIN, Amount.fixed("5"), "")),
                        List.of(step("s1", "Heat the water phase", 75))),
                new Phase(
                        "oil",
                        "Oil phase",
                        List.of(
                                new Line("l3", OIL, Amount.fixed("12"), ""),
                                new Line("l4", EMULSIFIER, Amount.fixed("4"), "")),
                        List.of(step("s2", "Melt the oil phase", 75))),
                new Phase(
                        "cool",
                        "Cool down",
                        List.of(
                                new Line("l5", PRESERVATIVE, Amount.fixed("0.5"), ""),
                                new Line(
                                        "l6",
                                        ACID,
                                        new Amount.ToReading(
                                                ReadingKind.PH, Percent.of("0.3"), PercentRange.of("0.1", "0.6")),
                                        "")),
                        List.of())));
    }

    private static Step step(String id, String doing, double celsius) {
        return new Step(
                id, doing, Optional.of(celsius), "slow", Optional.of(15.0), "clear", "Hot: gloves and goggles.");
    }

    OpenDesk desk() {
        return desk;
    }

    Ledger ledger() {
        return desk.ledger();
    }

    Answer get(String path) {
        return desk.get(path);
    }

    Answer post(String path, Map<String, String> form) {
        return desk.post(path, form);
    }

    /** Begins a batch of 500 g and gives back its id. */
    long begin(String code) {
        Map<String, String> form = new HashMap<>(Map.of("by", "mass", "mass", "500", "code", code, "who", "Ada"));
        form.put("edit", edit());
        Answer answer = post("/products/1/versions/1/plan", form);
        if (answer.status() != 303) {
            throw new AssertionError(answer.status() + " " + answer.body());
        }
        return ledger().batches().byCode(code).orElseThrow().id();
    }

    /** The edit that the plan page carries. */
    String edit() {
        Matcher edit = Pattern.compile("name=\"edit\" value=\"(\\d+)\"")
                .matcher(get("/products/1/versions/1/plan").body());
        if (!edit.find()) {
            throw new AssertionError("the plan page carries no edit");
        }
        return edit.group(1);
    }

    /** Posts one act of the bench with a name of its own. */
    Answer act(long batch, Map<String, String> fields) {
        Map<String, String> form = new HashMap<>(fields);
        form.putIfAbsent("requestId", UUID.randomUUID().toString());
        form.putIfAbsent("by", "Ada");
        form.putIfAbsent("seen", Integer.toString(log(batch).size()));
        return post("/batches/" + batch + "/log", form);
    }

    void readyBoth(long batch) {
        act(batch, Map.of("act", "ready", "newVessel", "Kettle", "tare", "800", "clean", "washed", "phase", "water"));
        act(batch, Map.of("act", "ready", "newVessel", "Beaker", "tare", "200", "clean", "washed", "phase", "oil"));
    }

    /** Both vessels weighed, heated and combined, and the preservative added. */
    void upToTheAcid(long batch) {
        readyBoth(batch);
        weigh(batch, "Kettle", "l1", "391", "W-1");
        weigh(batch, "Kettle", "l2", "25.4", "G-soon");
        weigh(batch, "Beaker", "l3", "60", "O-1");
        weigh(batch, "Beaker", "l4", "20", "E-1");
        for (String[] step : List.of(new String[] {"Kettle", "s1"}, new String[] {"Beaker", "s2"})) {
            act(batch, Map.of("act", "step", "vessel", step[0], "step", step[1], "doing", "Heated", "celsius", "75"));
        }
        act(batch, Map.of("act", "combine", "from", "Beaker", "into", "Kettle"));
        act(
                batch,
                Map.of(
                        "act",
                        "weigh",
                        "vessel",
                        "Kettle",
                        "line",
                        "l5",
                        "mass",
                        "2.5",
                        "lot",
                        "P-1",
                        "balance",
                        "Fine scale",
                        "note",
                        "quarantine lifted by word of the laboratory"));
    }

    Answer weigh(long batch, String vessel, String line, String mass, String lot) {
        return act(
                batch,
                Map.of(
                        "act",
                        "weigh",
                        "do",
                        "weigh",
                        "vessel",
                        vessel,
                        "line",
                        line,
                        "mass",
                        mass,
                        "lot",
                        lot,
                        "balance",
                        "Kitchen scale"));
    }

    List<LogEntry> log(long batch) {
        return ledger().batches().log(batch);
    }

    BatchState state(long batch) {
        return BatchState.of(log(batch));
    }

    Instant now() {
        return OpenDesk.NOW;
    }

    @Override
    public void close() {
        desk.close();
    }
}
