package stillroom.formulary.rule;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.reference.ReferenceRow;
import stillroom.formulary.reference.ReferenceTable;

/** Tables of published figures that judgements use: water activity, inhibition, exposure. */
final class PublishedFigures {
    private PublishedFigures() {}

    static Map<String, Double> norrish() {
        Map<String, Double> constants = new LinkedHashMap<>();
        for (ReferenceRow row : ReferenceTable.read("water-activity/norrish.csv", "substance", "k", "source")) {
            row.required("source");
            constants.put(row.required("substance"), row.requiredDecimal("k").doubleValue());
        }
        return constants;
    }

    static Map<String, InhibitionFigures> inhibition() {
        Map<String, InhibitionFigures> figures = new LinkedHashMap<>();
        for (ReferenceRow row : ReferenceTable.read(
                "preservation/inhibition.csv",
                "preservative",
                "log_p",
                "gram_negative_percent",
                "gram_negative_percent_high",
                "gram_positive_percent",
                "gram_positive_percent_high",
                "yeast_percent",
                "yeast_percent_high",
                "mould_percent",
                "mould_percent_high",
                "source")) {
            figures.put(
                    row.required("preservative"),
                    new InhibitionFigures(
                            row.required("preservative"),
                            row.number("log_p"),
                            range(row, "gram_negative_percent"),
                            range(row, "gram_positive_percent"),
                            range(row, "yeast_percent"),
                            range(row, "mould_percent"),
                            row.required("source")));
        }
        return figures;
    }

    private static Optional<Interval> range(ReferenceRow row, String column) {
        Optional<Double> low = row.number(column);
        return low.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Interval(low.get(), row.number(column + "_high").orElse(low.get())));
    }

    static Map<ProductType, ExposureFigures> exposure() {
        Map<ProductType, ExposureFigures> figures = new EnumMap<>(ProductType.class);
        for (ReferenceRow row : ReferenceTable.read(
                "exposure/sccs-notes-12.csv", "product_type", "product", "exposure_mg_per_kg_day", "source")) {
            ProductType type = row.choice("product_type", ProductType.class);
            figures.put(
                    type,
                    new ExposureFigures(
                            type,
                            row.required("product"),
                            row.requiredDecimal("exposure_mg_per_kg_day").doubleValue(),
                            row.required("source")));
        }
        return figures;
    }
}
