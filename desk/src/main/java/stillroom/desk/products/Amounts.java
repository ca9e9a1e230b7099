package stillroom.desk.products;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import stillroom.desk.shell.Format;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Figures;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.evaluation.Outcome;
import stillroom.ledger.workshop.Workshop;

/**
 * What a formula amounts to, as it stands beside it.
 *
 * @param total, water for the short line on narrow screens
 * @param figures what is known, and of the others why it is not known
 * @param phases share of each phase, in working order
 */
public record Amounts(
        Row total,
        Row water,
        List<Row> figures,
        List<PhaseShare> phases,
        List<Finding> findings,
        int warnings,
        LocalDate asOf,
        LocalDate lawRecordedOn) {
    public Amounts {
        figures = List.copyOf(figures);
        phases = List.copyOf(phases);
        findings = List.copyOf(findings);
    }

    /**
     * One figure.
     *
     * @param shown with its range; empty where it is not known
     * @param how the method, or why it is not known
     */
    public record Row(String name, String shown, String unit, String how) {
        public boolean isKnown() {
            return !shown.isEmpty();
        }
    }

    /** @param width of the bar, 0 to 100 */
    public record PhaseShare(String name, String shown, double width) {}

    public static Amounts of(Evaluation evaluation, Workshop workshop) {
        Figures figures = evaluation.figures();
        int decimals = workshop.decimalsShown();
        Row total = row(figures.totalPercent(), decimals);
        Row water = row(figures.waterPercent(), 1);
        List<Row> rows = new ArrayList<>(List.of(total, water));
        new TreeMap<>(figures.activeMatterPercent())
                .forEach((charge, figure) ->
                        rows.add(row("Active matter, " + Format.words(charge), figure, 1, figure.unit())));
        rows.add(outcome("pH, expected", figures.ph(), 1, ""));
        rows.add(outcome("Material cost of 100 g", figures.costPer100g(), 2, workshop.currency()));
        figures.others().forEach(figure -> rows.add(row(figure, figure.unit().isEmpty() ? 2 : 1)));
        return new Amounts(
                total,
                water,
                rows,
                figures.phasePercent().stream()
                        .map(figure -> share(figure, decimals))
                        .toList(),
                evaluation.findings(),
                evaluation.warnings().size(),
                evaluation.asOf(),
                evaluation.lawRecordedOn());
    }

    private static PhaseShare share(Figure figure, int decimals) {
        double width = Math.max(0, Math.min(100, figure.value()));
        return new PhaseShare(figure.name(), Format.figure(figure.value(), decimals), width);
    }

    private static Row row(Figure figure, int decimals) {
        return row(figure.name(), figure, decimals, figure.unit());
    }

    private static Row row(String name, Figure figure, int decimals, String unit) {
        return new Row(name, Format.range(figure.low(), figure.high(), decimals), unit, figure.method());
    }

    private static Row outcome(String name, Outcome<Figure> outcome, int decimals, String unit) {
        return outcome.match(figure -> row(name, figure, decimals, unit), because -> new Row(name, "", unit, because));
    }

    /** The findings of one weight. */
    public List<Finding> of(Finding.Kind kind) {
        return findings.stream().filter(finding -> finding.kind() == kind).toList();
    }

    public String warningsInWords() {
        return warnings == 0 ? "no warnings" : warnings == 1 ? "1 warning" : warnings + " warnings";
    }

    /** The findings that concern a line. */
    public List<Finding> onLine(String id) {
        return findings.stream().filter(finding -> finding.lines().contains(id)).toList();
    }

    /** The same figures by name, for two versions side by side. */
    Map<String, Row> byName() {
        Map<String, Row> rows = new java.util.LinkedHashMap<>();
        figures.forEach(row -> rows.put(row.name(), row));
        return rows;
    }
}
