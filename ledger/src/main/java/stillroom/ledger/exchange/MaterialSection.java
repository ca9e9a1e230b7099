package stillroom.ledger.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Strength;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Money;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;
import stillroom.formulary.quantity.Price;

/** One card of a raw material. */
final class MaterialSection {
    private static final LocalDate UNDATED = LocalDate.of(2026, 1, 1);
    private static final int MOST_CELSIUS = 500;
    private static final int MOST_REVISIONS = 100_000;

    private MaterialSection() {}

    /** Empty, with the problem noted, where it has no usable key. */
    static Optional<Material> read(Fields unnamed) {
        String key = Words.bare(unnamed.text("key"));
        if (!key.matches("[a-z0-9][a-z0-9-]{0,79}")) {
            unnamed.problem(
                    "key",
                    "key must be small letters, digits and hyphens, such as my-betaine, is \"" + Shown.brief(key)
                            + "\"");
            return Optional.empty();
        }
        Fields fields = unnamed.called("material " + key);
        String name = fields.text("name");
        Material card = new Material(
                key,
                fields.decimal("revision", 1, MOST_REVISIONS)
                        .map(BigDecimal::intValue)
                        .orElse(1),
                fields.day("revisedOn").orElse(UNDATED),
                name.isEmpty() ? key : name,
                fields.word("family", Family.class).orElse(Family.OTHER),
                fields.texts("functions"),
                CompositionFields.read(fields),
                strength(fields),
                Spans.percents(fields, "usage"),
                Spans.interval(fields, "workingPh", 0, 14),
                Spans.interval(fields, "ownPh", 0, 14),
                fields.decimal("gramsPerMillilitre", 0, 20)
                        .filter(one -> one.signum() > 0)
                        .map(BigDecimal::doubleValue),
                fields.text("solubility"),
                fields.number("maxCelsius", -50, MOST_CELSIUS),
                fields.texts("cautions"),
                fields.text("grade"),
                fields.text("supplier"),
                price(fields),
                fields.text("note"),
                fields.number("naturalOriginIndex", 0, 1),
                sources(fields),
                fields.object("certificate").flatMap(CertificateFields::read));
        fields.done();
        return Optional.of(card);
    }

    private static Optional<Strength> strength(Fields card) {
        return card.object("strength").flatMap(fields -> {
            Optional<Spans.Share> share = Spans.share(fields);
            Optional<Strength.Basis> basis = fields.word("basis", Strength.Basis.class);
            String of = fields.text("of");
            if (share.isEmpty() && !fields.has("percent") && !fields.has("low")) {
                fields.problem("percent", "percent is missing");
            }
            if (basis.isEmpty() && !fields.has("basis")) {
                fields.problem(
                        "basis",
                        "a strength needs its basis: active, dry-residue, assay-as-is, as-anhydrous or as-acid");
            }
            fields.done();
            return share.isPresent() && basis.isPresent()
                    ? Optional.of(new Strength(range(share.get()), basis.get(), of))
                    : Optional.empty();
        });
    }

    private static PercentRange range(Spans.Share share) {
        return new PercentRange(new Percent(share.low()), new Percent(share.high()));
    }

    private static Optional<Price> price(Fields card) {
        return card.object("price").flatMap(fields -> {
            Optional<BigDecimal> paid = fields.decimal("paid", 0, 1_000_000);
            Optional<BigDecimal> grams =
                    fields.decimal("grams", 0, 1_000_000_000).filter(one -> one.signum() > 0);
            if (paid.isEmpty() || grams.isEmpty()) {
                fields.problem("paid", "a price needs paid, and grams above 0");
            }
            fields.done();
            return paid.isPresent() && grams.isPresent()
                    ? Optional.of(new Price(new Money(paid.get()), new Grams(grams.get())))
                    : Optional.empty();
        });
    }

    private static Map<String, String> sources(Fields card) {
        JsonNode node = card.value("sources");
        Map<String, String> sources = new HashMap<>();
        if (!node.isMissingNode() && !node.isObject()) {
            card.problem("sources", "sources must be an object of texts by field");
        }
        node.fields()
                .forEachRemaining(
                        one -> sources.put(one.getKey(), one.getValue().asText()));
        return sources;
    }

    static void write(Material card, ObjectNode into) {
        into.put("key", card.key());
        into.put("name", card.name());
        into.put("revision", card.revision());
        into.put("revisedOn", card.revisedOn().toString());
        into.put("family", Words.of(card.family()));
        list(into, "functions", card.functions());
        CompositionFields.write(card.composition(), into);
        card.strength().ifPresent(one -> write(one, into.putObject("strength")));
        Spans.putPercents(into, "usage", card.usage());
        Spans.put(into, "workingPh", card.workingPh());
        Spans.put(into, "ownPh", card.ownPh());
        card.densityGramsPerMillilitre().ifPresent(one -> into.put("gramsPerMillilitre", Spans.plain(one)));
        Texts.put(into, "solubility", card.solubility());
        card.maxCelsius().ifPresent(one -> into.put("maxCelsius", Spans.plain(one)));
        list(into, "cautions", card.cautions());
        Texts.put(into, "grade", card.grade());
        Texts.put(into, "supplier", card.supplier());
        card.price().ifPresent(one -> {
            ObjectNode price = into.putObject("price");
            price.put("paid", one.paid().value());
            price.put("grams", one.amount().value());
        });
        Texts.put(into, "note", card.note());
        card.naturalOriginIndex().ifPresent(one -> into.put("naturalOriginIndex", Spans.plain(one)));
        card.certificate().ifPresent(one -> CertificateFields.write(one, into.putObject("certificate")));
        if (!card.sources().isEmpty()) {
            ObjectNode sources = into.putObject("sources");
            new TreeMap<>(card.sources()).forEach(sources::put);
        }
    }

    private static void write(Strength strength, ObjectNode into) {
        into.put("low", strength.percent().low().value());
        into.put("high", strength.percent().high().value());
        into.put("basis", Words.of(strength.basis()));
        Texts.put(into, "of", strength.of());
    }

    private static void list(ObjectNode into, String name, List<String> texts) {
        if (!texts.isEmpty()) {
            Spans.list(into, name, texts);
        }
    }
}
