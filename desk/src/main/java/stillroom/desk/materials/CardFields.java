package stillroom.desk.materials;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Material;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.PercentRange;

/** A card as the fields of its form. {@link CardReader} goes the other way. */
final class CardFields {
    static final int BLANK_ROWS = 1;

    private final Map<String, String> values = new HashMap<>();

    private CardFields() {}

    /** The fields of an empty form with the name filled in. */
    static Map<String, String> empty(String name) {
        return Map.of("name", name, "family", "OTHER", ConstituentRows.COUNT, "2", "revision", "0");
    }

    static Map<String, String> of(Material card, Inci inci) {
        CardFields fields = new CardFields();
        fields.words(card);
        fields.figures(card);
        fields.composition(card.composition(), inci);
        fields.ownFacts(card);
        fields.values.putAll(CertificateFields.of(card.certificate()));
        for (Fact fact : Fact.values()) {
            fields.put(fact.sourceField(), card.sources().getOrDefault(fact.component(), ""));
        }
        return fields.values;
    }

    private void words(Material card) {
        put("revision", Integer.toString(card.revision()));
        put("name", card.name());
        put("family", card.family().name());
        put("functions", String.join(", ", card.functions()));
        put("solubility", card.solubility());
        put("cautions", String.join("\n", card.cautions()));
        put("note", card.note());
    }

    private void figures(Material card) {
        card.strength().ifPresent(strength -> {
            percents("strength", Optional.of(strength.percent()));
            put("strength-basis", strength.basis().name());
            put("strength-of", strength.of());
        });
        percents("usage", card.usage());
        interval("working-ph", card.workingPh());
        interval("own-ph", card.ownPh());
        card.densityGramsPerMillilitre().ifPresent(figure -> put("density", Words.plain(figure)));
        card.maxCelsius().ifPresent(figure -> put("max-celsius", Words.plain(figure)));
        card.naturalOriginIndex().ifPresent(figure -> put("natural-origin", Words.plain(figure)));
    }

    private void composition(List<Constituent> composition, Inci inci) {
        List<ConstituentRows.Row> rows = new ArrayList<>();
        composition.forEach(part -> rows.add(ConstituentRows.Row.of(part, inci)));
        for (int blank = 0; blank < BLANK_ROWS; blank++) {
            rows.add(ConstituentRows.Row.BLANK);
        }
        values.putAll(ConstituentRows.fields(rows));
    }

    private void ownFacts(Material card) {
        put("grade", card.grade());
        put("supplier", card.supplier());
        card.price().ifPresent(price -> {
            put("paid", price.paid().value().toPlainString());
            put("paid-grams", price.amount().toString());
        });
    }

    private void percents(String field, Optional<PercentRange> range) {
        range.ifPresent(known -> {
            put(field + "-low", known.low().toString());
            put(field + "-high", known.high().toString());
        });
    }

    private void interval(String field, Optional<Interval> interval) {
        interval.ifPresent(known -> {
            put(field + "-low", Words.plain(known.low()));
            put(field + "-high", Words.plain(known.high()));
        });
    }

    private void put(String field, String value) {
        values.put(field, value);
    }
}
