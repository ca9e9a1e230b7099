package stillroom.desk.trials;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillroom.desk.OpenDesk;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.trial.TrialSet;

/** A product of three lines in one phase, and trials on it; invented. */
record ThreeLines(OpenDesk desk, long product) {
    static ThreeLines on(OpenDesk desk) {
        desk.ledger()
                .equipment()
                .writeBalances(List.of(new Balance("Fine scale", Grams.of("0.01"), Optional.empty(), Grams.of("600"))));
        Brief brief = new Brief(
                ProductType.HAND_CREAM,
                Set.of(Brief.People.ADULTS),
                "hands",
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                "bottle",
                "EU");
        Product product = desk.ledger().products().add("Three lines", brief, "");
        Formula formula = new Formula(List.of(new Phase(
                "a",
                "All",
                List.of(
                        new Line("w", "water-purified", new Amount.ToHundred(), ""),
                        new Line("g", "glycerin-99", Amount.fixed("25"), ""),
                        new Line("o", "sunflower-oil", Amount.fixed("15"), "")),
                List.of())));
        desk.ledger().products().newVersion(product.id(), Optional.empty(), formula, "first", OpenDesk.NOW);
        return new ThreeLines(desk, product.id());
    }

    /** A form that can be answered; fields given replace its own. */
    Map<String, List<String>> form(Map<String, String> other) {
        Map<String, List<String>> form = new LinkedHashMap<>();
        form.put("product", List.of("" + product));
        form.put("version", List.of("1"));
        form.put("name", List.of("three"));
        form.put("component", List.of("w", "g", "o"));
        Map<String, String> usual =
                Map.of("low-w", "40", "high-w", "80", "low-g", "10", "high-g", "50", "low-o", "10", "high-o", "50");
        usual.forEach((field, value) -> form.put(field, List.of(value)));
        form.put("response1", List.of("Thickness"));
        form.put("model", List.of("LINEAR"));
        form.put("criterion", List.of("D"));
        form.put("runs", List.of("8"));
        form.put("repeats", List.of("2"));
        other.forEach((field, value) -> form.put(field, List.of(value)));
        return form;
    }

    /** The same with only the first two lines varying; the third stays at 15 %. */
    Map<String, List<String>> two(Map<String, String> other) {
        Map<String, List<String>> form = form(other);
        form.put("component", List.of("w", "g"));
        return form;
    }

    OpenDesk.Answer ask(Map<String, String> other) {
        return desk.postAll("/trials/new", form(other));
    }

    TrialSet made(Map<String, String> other) {
        OpenDesk.Answer answer = ask(other);
        if (answer.status() != 303) {
            throw new AssertionError(answer.status() + " " + answer.body());
        }
        return stored(answer.location().replaceAll(".*/trials/(t\\d+).*", "$1"));
    }

    TrialSet stored(String key) {
        return desk.ledger().drawer("trial-set", TrialSet.class).read(key).orElseThrow();
    }

    /** Weighs a run out on the bench pages: 100 g planned, and so many grams poured of each line. */
    void weigh(TrialSet set, TrialSet.Run run, double... grams) {
        String plan = "/products/" + set.product() + "/versions/" + run.version() + "/plan";
        Map<String, String> form =
                new HashMap<>(Map.of("by", "mass", "mass", "100", "code", "T-" + run.version(), "who", "Ada"));
        Matcher edit = Pattern.compile("name=\"edit\" value=\"(\\d+)\"")
                .matcher(desk.get(plan).body());
        form.put("edit", edit.find() ? edit.group(1) : "");
        expect(desk.post(plan, form));
        long batch = desk.ledger()
                .batches()
                .byCode("T-" + run.version())
                .orElseThrow()
                .id();
        act(batch, Map.of("act", "ready", "newVessel", "Beaker", "tare", "80", "clean", "washed", "phase", "a"));
        String[] lines = {"w", "g", "o"};
        for (int i = 0; i < lines.length; i++) {
            act(
                    batch,
                    Map.of(
                            "act",
                            "weigh",
                            "vessel",
                            "Beaker",
                            "line",
                            lines[i],
                            "mass",
                            "" + grams[i],
                            "lot",
                            "",
                            "balance",
                            "Fine scale",
                            "note",
                            "poured on purpose"));
        }
    }

    private void act(long batch, Map<String, String> fields) {
        Map<String, String> form = new HashMap<>(fields);
        form.put("requestId", UUID.randomUUID().toString());
        form.put("by", "Ada");
        form.put("seen", "" + desk.ledger().batches().log(batch).size());
        expect(desk.post("/batches/" + batch + "/log", form));
    }

    private static void expect(OpenDesk.Answer answer) {
        if (answer.status() != 303) {
            throw new AssertionError(answer.status() + " " + answer.body());
        }
    }

    /** Enters one response per run, in the order of the runs. */
    OpenDesk.Answer enter(TrialSet set, List<String> values) {
        Map<String, String> form = new HashMap<>();
        for (int i = 0; i < values.size(); i++) {
            form.put("m" + set.runs().get(i).version() + "-0", values.get(i));
        }
        return desk.post("/trials/" + set.key(), form);
    }
}
