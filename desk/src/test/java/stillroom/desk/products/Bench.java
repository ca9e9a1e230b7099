package stillroom.desk.products;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillroom.desk.OpenDesk;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.formula.Step;

/** A product with a draft of two phases, and its form as a browser would send it. */
record Bench(OpenDesk desk, Product product) {
    static final Formula FORMULA = new Formula(List.of(
            new Phase(
                    "p1",
                    "Water phase",
                    List.of(
                            new Line("a", "water-purified", new Amount.ToHundred(), ""),
                            new Line("b", "glycerin-86", Amount.fixed("5"), "slip"),
                            new Line("c", "sodium-benzoate", Amount.fixed("0.5"), "")),
                    List.of(new Step(
                            "s1", "Stir", Optional.of(25.0), "slowly", Optional.of(10.0), "clear", "goggles"))),
            new Phase(
                    "p2", "At the end", List.of(new Line("d", "citric-acid-50", Amount.fixed("0.4"), "")), List.of())));

    static Bench on(OpenDesk desk) {
        Product product = desk.ledger().products().add("Hand wash", Brief.of(ProductType.HAND_WASH), "");
        desk.ledger().products().newVersion(product.id(), Optional.empty(), FORMULA, "first try", OpenDesk.NOW);
        return new Bench(desk, product);
    }

    String path() {
        return "/products/" + product.id() + "/versions/1";
    }

    FormulaVersion stored() {
        return desk.ledger().products().version(product.id(), 1).orElseThrow();
    }

    Answer post(String behind, Map<String, List<String>> form) {
        return desk.postAll(path() + behind, form);
    }

    /** The form as it is filled when the page is opened. */
    Map<String, List<String>> form() {
        FormulaVersion version = stored();
        Cards cards = Cards.of(desk.ledger().materials().book());
        Draft draft = DraftWriting.of(version.formula(), version.why(), cards, 2);
        Map<String, List<String>> form = new LinkedHashMap<>();
        draft.values().forEach((field, value) -> form.put(field, List.of(value)));
        form.put("edit", List.of(Integer.toString(version.edit())));
        form.put("phase", draft.slots().stream().map(Draft.Slot::phase).toList());
        form.put(
                "line",
                draft.slots().stream().flatMap(slot -> slot.lines().stream()).toList());
        form.put(
                "step",
                draft.slots().stream().flatMap(slot -> slot.steps().stream()).toList());
        for (Draft.Slot slot : draft.slots()) {
            slot.lines().forEach(id -> form.put(Draft.line(id, "phase"), List.of(slot.phase())));
            slot.steps().forEach(id -> form.put(Draft.step(id, "phase"), List.of(slot.phase())));
        }
        return form;
    }

    Map<String, List<String>> formWith(String field, String value) {
        Map<String, List<String>> form = form();
        form.put(field, List.of(value));
        return form;
    }

    /** The form with one more line below the others. */
    Map<String, List<String>> formWithLine(String id, String material, String amount) {
        Map<String, List<String>> form = form();
        form.put("line", Stream.concat(form.get("line").stream(), Stream.of(id)).toList());
        form.put(Draft.line(id, "material"), List.of(material));
        form.put(Draft.line(id, "amount"), List.of(amount));
        form.put(Draft.line(id, "phase"), List.of("p1"));
        return form;
    }

    /** How many warnings the short line at the foot of a formula's page counts. */
    static int warnings(String page) {
        Matcher counted = Pattern.compile("<span>(no|\\d+) warnings?</span>").matcher(page);
        if (!counted.find()) {
            throw new IllegalArgumentException("the page counts no warnings");
        }
        return counted.group(1).equals("no") ? 0 : Integer.parseInt(counted.group(1));
    }

    Set<String> keys() {
        return stored().formula().lines().stream().map(Line::materialKey).collect(Collectors.toSet());
    }

    String amountOf(String line) {
        return stored().formula().line(line).orElseThrow().amount().toString();
    }
}
