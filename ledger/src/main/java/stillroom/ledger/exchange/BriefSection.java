package stillroom.ledger.exchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.Money;

/** What the product is meant to be. */
final class BriefSection {
    private static final int MOST_MONEY = 1_000_000;

    /** Whether the product stays on the skin. */
    private enum Use {
        LEAVE_ON,
        RINSE_OFF
    }

    private BriefSection() {}

    static Brief read(Fields fields) {
        Set<Brief.People> people = fields.words("people", Brief.People.class);
        Optional<Fields> ph = fields.value("ph").isObject() ? fields.object("ph") : Optional.empty();
        Optional<Double> target = ph.flatMap(one -> one.number("target", 0, 14));
        Optional<Interval> band = band(fields, ph);
        ph.ifPresent(Fields::done);
        if (target.isPresent()
                && band.filter(one -> !one.contains(target.get())).isPresent()) {
            fields.problem("ph", "ph target " + target.get() + " lies outside its band");
        }
        Brief brief = new Brief(
                type(fields),
                people.isEmpty() ? Set.of(Brief.People.ADULTS) : people,
                fields.text("area"),
                fields.text("feel"),
                band,
                target,
                fields.decimal("priceCeilingPer100g", 0, MOST_MONEY).map(Money::new),
                fields.texts("claims"),
                fields.text("pack"),
                market(fields));
        fields.done();
        return brief;
    }

    /** In an object the band may be absent and only the target stand. */
    private static Optional<Interval> band(Fields fields, Optional<Fields> ph) {
        boolean low = ph.isPresent() && ph.get().has("low");
        boolean high = ph.isPresent() && ph.get().has("high");
        if (ph.isPresent() && !low && !high) {
            return Optional.empty();
        }
        return Spans.interval(fields, "ph", 0, 14);
    }

    private static ProductType type(Fields fields) {
        Optional<Use> use = fields.word("use", Use.class);
        ProductType fallback = use.filter(one -> one == Use.RINSE_OFF).isPresent()
                ? ProductType.OTHER_RINSE_OFF
                : ProductType.OTHER_LEAVE_ON;
        if (!fields.has("type")) {
            if (use.isEmpty()) {
                fields.problem("type", "type is missing: the kind of product, or \"use\": leave-on or rinse-off");
            }
            return fallback;
        }
        ProductType type = fields.word("type", ProductType.class).orElse(fallback);
        if (use.isPresent() && type.leaveOn() != (use.get() == Use.LEAVE_ON)) {
            fields.problem(
                    "use",
                    "use is " + Words.of(use.get()) + ", but a product of type " + Words.of(type) + " is "
                            + (type.leaveOn() ? "left on" : "rinsed off"));
        }
        return type;
    }

    private static String market(Fields fields) {
        String market = fields.text("market").toUpperCase(Locale.ROOT);
        if (market.isEmpty()) {
            return "EU";
        }
        if (!market.matches("[A-Z][A-Z-]{0,11}")) {
            fields.problem("market", "market must be a code such as EU, UK or US, is \"" + Shown.brief(market) + "\"");
            return "EU";
        }
        return market.equals("GB") ? "UK" : market;
    }

    static void write(Brief brief, ObjectNode into) {
        into.put("type", Words.of(brief.type()));
        into.put("use", Words.of(brief.type().leaveOn() ? Use.LEAVE_ON : Use.RINSE_OFF));
        Spans.list(
                into, "people", brief.people().stream().sorted().map(Words::of).toList());
        Texts.put(into, "area", brief.where());
        into.put("market", brief.market());
        if (brief.phBand().isPresent() || brief.phTarget().isPresent()) {
            ObjectNode ph = into.putObject("ph");
            brief.phBand().ifPresent(band -> {
                ph.put("low", Spans.plain(band.low()));
                ph.put("high", Spans.plain(band.high()));
            });
            brief.phTarget().ifPresent(target -> ph.put("target", Spans.plain(target)));
        }
        if (!brief.claims().isEmpty()) {
            Spans.list(into, "claims", brief.claims());
        }
        Texts.put(into, "feel", brief.feel());
        Texts.put(into, "pack", brief.pack());
        brief.priceCeilingPer100g().ifPresent(money -> into.put("priceCeilingPer100g", money.value()));
    }
}
