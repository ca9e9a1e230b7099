package stillroom.desk.cli.formula;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Collectors;
import stillroom.desk.shell.FindingWords;
import stillroom.desk.shell.Format;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.evaluation.PreservativeState;
import stillroom.ledger.exchange.FileProblem;
import stillroom.ledger.exchange.ReadyFormula;

/** A judgement as a person reads it in a terminal. */
final class EvaluationText {
    private static final int DECIMALS = 3;
    private static final int MARGIN = 4;

    private EvaluationText() {}

    static String of(ReadyFormula ready, Evaluation evaluation, List<FileProblem> remarks) {
        StringBuilder text = new StringBuilder();
        String name = ready.file().name().isEmpty()
                ? "Formula without a name"
                : ready.file().name();
        text.append(Plain.paragraph("", 0, name));
        text.append(Plain.paragraph(
                "",
                0,
                evaluation.market() + ", as of " + evaluation.asOf() + "; law as recorded on "
                        + evaluation.lawRecordedOn() + "."));
        text.append(Plain.paragraph("", 0, counts(evaluation.findings())));
        evaluation.findings().forEach(finding -> text.append('\n').append(finding(ready, finding)));
        text.append('\n').append(figures(evaluation));
        preservation(evaluation, text);
        remarks.forEach(remark -> text.append(Plain.paragraph("Remark: ", MARGIN, remark.words())));
        text.append(Plain.paragraph(
                "",
                0,
                "This advises and certifies nothing: the safety assessor and the law of the place of sale decide."));
        return text.toString();
    }

    static String counts(List<Finding> findings) {
        String counts = Arrays.stream(Finding.Kind.values())
                .filter(kind -> count(findings, kind) > 0)
                .map(kind -> count(findings, kind) + " " + Format.words(kind))
                .collect(Collectors.joining(", "));
        return counts.isEmpty() ? "No findings." : "Findings: " + counts + ".";
    }

    private static long count(List<Finding> findings, Finding.Kind kind) {
        return findings.stream().filter(finding -> finding.kind() == kind).count();
    }

    static String finding(ReadyFormula ready, Finding finding) {
        StringBuilder text = new StringBuilder(
                Plain.paragraph("", 0, FindingWords.of(finding).toUpperCase(Locale.ROOT) + "  " + finding.rule()));
        String names = finding.lines().stream()
                .map(id -> ready.names().getOrDefault(id, id))
                .distinct()
                .collect(Collectors.joining(", "));
        text.append(Plain.paragraph("  ", MARGIN, (names.isEmpty() ? "" : names + ": ") + finding.says()));
        finding.compared().forEach(figure -> text.append(Plain.paragraph("  ", MARGIN, shown(figure))));
        if (!finding.mend().isEmpty()) {
            text.append(Plain.paragraph("  To mend: ", MARGIN, finding.mend()));
        }
        return text.append(Plain.paragraph("  Source: ", MARGIN, finding.source()))
                .toString();
    }

    private static String figures(Evaluation evaluation) {
        StringBuilder text = new StringBuilder("Figures\n");
        var figures = evaluation.figures();
        text.append(Plain.paragraph("  ", MARGIN, shown(figures.totalPercent())));
        text.append(Plain.paragraph("  ", MARGIN, shown(figures.waterPercent())));
        text.append(Plain.paragraph(
                "  ", MARGIN, figures.ph().match(EvaluationText::shown, because -> "pH not known: " + because)));
        new TreeMap<>(figures.activeMatterPercent())
                .forEach((charge, figure) ->
                        text.append(Plain.paragraph("  ", MARGIN, shown(figure) + " " + Format.words(charge))));
        figures.others().forEach(figure -> text.append(Plain.paragraph("  ", MARGIN, shown(figure))));
        return text.toString();
    }

    private static void preservation(Evaluation evaluation, StringBuilder text) {
        if (evaluation.preservation().isEmpty()) {
            return;
        }
        text.append("\nPreservatives at the product's pH; only a challenge test shows preservation\n");
        for (PreservativeState state : evaluation.preservation()) {
            String gaps = state.against().stream()
                    .map(one -> one.group().words() + " " + Format.words(one.standing()) + " published figures")
                    .collect(Collectors.joining("; "));
            text.append(Plain.paragraph(
                    "  ",
                    MARGIN,
                    state.name() + ": total " + Format.figure(state.totalPercent(), DECIMALS) + " %, undissociated "
                            + Format.range(state.undissociatedPercent(), 0) + " % of it, free in the water "
                            + Format.range(state.freePercent(), DECIMALS) + " %"
                            + (gaps.isEmpty() ? "" : "; " + gaps) + "."));
        }
        text.append('\n');
    }

    private static String shown(Figure figure) {
        boolean ph = figure.unit().equals("pH");
        String unit = figure.unit().isEmpty() || ph ? "" : " " + figure.unit();
        String low = bare(figure.low(), ph);
        String high = bare(figure.high(), ph);
        return figure.name() + ": " + (low.equals(high) ? low : low + " to " + high) + unit;
    }

    /** Three decimals at most, two of a pH, no zeros at the end. */
    private static String bare(double value, boolean ph) {
        BigDecimal rounded = BigDecimal.valueOf(value)
                .setScale(ph ? 2 : DECIMALS, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return Format.decimal(rounded, Math.max(0, rounded.scale()));
    }
}
