package stillroom.formulary.rule;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
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

    /** Exposure by all preserved products together; its kind of product is not one, so any stands for it. */
    static Optional<ExposureFigures> aggregateOfPreservatives() {
        return ReferenceTable.read(
                        "exposure/sccs-notes-12-aggregate.csv", "tag", "products", "exposure_mg_per_kg_day", "source")
                .stream()
                .filter(row -> row.required("tag").equals("preservative-annex-v"))
                .findFirst()
                .map(row -> new ExposureFigures(
                        ProductType.OTHER_LEAVE_ON,
                        row.required("products"),
                        row.requiredDecimal("exposure_mg_per_kg_day").doubleValue(),
                        row.required("source")));
    }

    static DistributionFigures distribution() {
        Map<String, Map<DistributionFigures.OilKind, DistributionFigures.Published>> oils = new LinkedHashMap<>();
        for (ReferenceRow row : ReferenceTable.read(
                "preservation/partition.csv", "preservative", "oil", "ratio", "ratio_high", "source")) {
            oils.computeIfAbsent(row.required("preservative"), key -> new EnumMap<>(DistributionFigures.OilKind.class))
                    .put(row.choice("oil", DistributionFigures.OilKind.class), published(row, "ratio"));
        }
        Map<String, Map<String, DistributionFigures.Published>> micelles = new LinkedHashMap<>();
        for (ReferenceRow row : ReferenceTable.read(
                "preservation/micelles.csv",
                "preservative",
                "surfactant",
                "per_percent",
                "per_percent_high",
                "source")) {
            micelles.computeIfAbsent(row.required("preservative"), key -> new LinkedHashMap<>())
                    .put(row.required("surfactant"), published(row, "per_percent"));
        }
        return new DistributionFigures(oils, micelles);
    }

    private static DistributionFigures.Published published(ReferenceRow row, String column) {
        row.required(column);
        return new DistributionFigures.Published(range(row, column).orElseThrow(), row.required("source"));
    }

    static List<GrowthFigures> growth() {
        Map<Organisms, GrowthFigures> figures = new EnumMap<>(Organisms.class);
        for (ReferenceRow row :
                ReferenceTable.read("water-activity/growth.csv", "group", "organism", "least_activity", "source")) {
            double least = row.requiredDecimal("least_activity").doubleValue();
            GrowthFigures one = new GrowthFigures(
                    row.choice("group", Organisms.class),
                    row.required("organism"),
                    Interval.point(least),
                    row.required("source"));
            figures.merge(one.group(), one, PublishedFigures::together);
        }
        return List.copyOf(figures.values());
    }

    private static GrowthFigures together(GrowthFigures one, GrowthFigures other) {
        GrowthFigures drier = one.least().low() <= other.least().low() ? one : other;
        Interval least = new Interval(
                Math.min(one.least().low(), other.least().low()),
                Math.max(one.least().high(), other.least().high()));
        String source = one.source().equals(other.source()) ? one.source() : one.source() + "; " + other.source();
        return new GrowthFigures(one.group(), drier.organism(), least, source);
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
