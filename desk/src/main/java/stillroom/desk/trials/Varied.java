package stillroom.desk.trials;

import java.util.List;
import java.util.Map;
import stillroom.desk.shell.Desk;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Product;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Percent;

/** The version that trials vary, with what each line takes of it. */
record Varied(Product product, FormulaVersion version, MaterialBook book) {
    static Varied of(Desk desk, Product product, FormulaVersion version) {
        MaterialBook book = desk.ledger().materials().book(version);
        return new Varied(product, version, book);
    }

    List<Line> lines() {
        return version.formula().lines();
    }

    String name(Line line) {
        return book.material(line.materialKey()).map(card -> card.name()).orElse(line.materialKey());
    }

    /** What a line takes: stated, expected, or what the others leave [mass percent]. */
    double percent(String lineId) {
        Line line = version.formula().line(lineId).orElseThrow();
        return line.amount()
                .match(
                        fixed -> fixed.percent().value().doubleValue(),
                        () -> 100 - others(lineId),
                        reading -> reading.expected().value().doubleValue());
    }

    private double others(String lineId) {
        return lines().stream()
                .filter(line -> !line.id().equals(lineId))
                .mapToDouble(line -> line.amount()
                        .match(
                                fixed -> fixed.percent().value().doubleValue(),
                                () -> 0.0,
                                reading -> reading.expected().value().doubleValue()))
                .sum();
    }

    /** The formula with new percentages in some lines; a line that takes what is left goes on doing so. */
    Formula with(Map<String, Percent> percents) {
        return new Formula(version.formula().phases().stream()
                .map(phase -> new Phase(
                        phase.id(),
                        phase.name(),
                        phase.lines().stream()
                                .map(line -> changed(line, percents))
                                .toList(),
                        phase.steps()))
                .toList());
    }

    private static Line changed(Line line, Map<String, Percent> percents) {
        boolean stays = !percents.containsKey(line.id()) || line.amount() instanceof Amount.ToHundred;
        return stays
                ? line
                : new Line(
                        line.id(),
                        line.materialKey(),
                        new Amount.Fixed(java.util.Objects.requireNonNull(percents.get(line.id()))),
                        line.note());
    }
}
