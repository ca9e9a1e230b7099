package stillroom.desk.products;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Markets;
import stillroom.desk.shell.Typed;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Brief.People;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.quantity.Interval;

/** The form of a brief: how it is filled and how it is read. */
final class BriefForm {
    private static final int LONGEST_NAME = 120;

    private BriefForm() {}

    /** A stored brief in the fields. */
    static Typed of(Product product) {
        return of(product.name(), product.note(), product.brief());
    }

    static Typed of(String name, String note, Brief brief) {
        Map<String, String> values = new LinkedHashMap<>();
        values.put("name", name);
        values.put("note", note);
        values.put("type", brief.type().name());
        brief.people().forEach(people -> values.put(ticked(people), "on"));
        values.put("where", brief.where());
        values.put("feel", brief.feel());
        values.put(
                "ph-low",
                brief.phBand().map(band -> DraftWriting.plain(band.low())).orElse(""));
        values.put(
                "ph-high",
                brief.phBand().map(band -> DraftWriting.plain(band.high())).orElse(""));
        values.put("ph-target", brief.phTarget().map(DraftWriting::plain).orElse(""));
        values.put(
                "ceiling",
                brief.priceCeilingPer100g()
                        .map(money -> money.value().toPlainString())
                        .orElse(""));
        values.put("claims", String.join("\n", brief.claims()));
        values.put("pack", brief.pack());
        values.put("market", brief.market());
        return new Typed(values, List.of());
    }

    static String ticked(People people) {
        return "people-" + people.name();
    }

    /** The name of the product; a problem where it is missing or too long for lists and labels. */
    static String name(Input input) {
        String name = input.required("name", "A name");
        if (name.length() > LONGEST_NAME) {
            input.refuse("name", "This name has " + name.length() + " characters; up to " + LONGEST_NAME + " fit.");
        }
        return name;
    }

    /** What the form says; where a field cannot be read it has a problem and counts as empty. */
    static Brief read(Input input) {
        ProductType type = input.choice("type", "The type", ProductType.class).orElse(ProductType.OTHER_LEAVE_ON);
        Optional<Interval> band = band(input);
        Optional<Double> target = ph(input, "ph-target", "The pH aimed at");
        if (target.isPresent() && band.isPresent() && !band.get().contains(target.get())) {
            input.refuse("ph-target", "The pH aimed at lies outside the band.");
        }
        return new Brief(
                type,
                people(input),
                input.text("where"),
                input.text("feel"),
                band,
                target,
                input.money("ceiling", "The price ceiling"),
                input.lines("claims"),
                input.text("pack"),
                market(input));
    }

    private static Set<People> people(Input input) {
        Set<People> people = Arrays.stream(People.values())
                .filter(one -> input.has(ticked(one)))
                .collect(Collectors.toSet());
        if (people.isEmpty()) {
            input.refuse("people", "Say who will use it; limits depend on it.");
        }
        return people;
    }

    private static Optional<Interval> band(Input input) {
        Optional<Double> low = ph(input, "ph-low", "The lower end");
        Optional<Double> high = ph(input, "ph-high", "The upper end");
        if (low.isPresent() != high.isPresent() && !input.hasProblem("ph-low") && !input.hasProblem("ph-high")) {
            return input.refuse(low.isPresent() ? "ph-high" : "ph-low", "A band has two ends.");
        }
        if (low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        return low.get() <= high.get()
                ? Optional.of(new Interval(low.get(), high.get()))
                : input.refuse("ph-high", "The upper end lies below the lower one.");
    }

    private static Optional<Double> ph(Input input, String field, String what) {
        return input.number(field, what, "0", "14");
    }

    private static String market(Input input) {
        String market = input.text("market");
        if (Markets.codes().contains(market)) {
            return market;
        }
        input.refuse("market", "This market is not one of the choices.");
        return "EU";
    }
}
