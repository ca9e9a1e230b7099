package stillroom.desk.safety;

import java.util.List;
import java.util.Optional;
import stillroom.desk.chemistry.Studied;
import stillroom.desk.safety.SafetyPage.Asked;
import stillroom.desk.safety.SafetyPage.Line;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.judgement.safety.SafetyLine;
import stillroom.formulary.judgement.safety.SafetyTable;

/** Puts the assessor's table into words. */
final class SafetyView {
    private SafetyView() {}

    static SafetyPage page(Frame frame, Studied of, SafetyTable table, Optional<Asked> asked, Typed own) {
        return new SafetyPage(
                frame, of, exposure(table), table.exposureSource(), lines(table), missing(table), asked, own);
    }

    static String exposure(SafetyTable table) {
        return table.exposureMilligramsPerKilogramDay()
                .match(
                        known -> Format.significant(known) + " mg of product per kg body weight and day ("
                                + table.product() + ")",
                        because -> "not known: " + because);
    }

    static String missing(SafetyTable table) {
        return table.unknown().isEmpty()
                ? ""
                : "Not in the table, as no composition is known: " + String.join(", ", table.unknown()) + ", "
                        + Format.significant(table.unknownPercent()) + " % of the product.";
    }

    static List<Line> lines(SafetyTable table) {
        return table.lines().stream().map(SafetyView::line).toList();
    }

    private static Line line(SafetyLine line) {
        return new Line(
                line.substance(),
                line.name(),
                Format.significant(line.percent()),
                Format.figure(line.absorbedFraction() * 100, 0),
                line.absorptionSource().equals(SafetyTable.DEFAULT_SOURCE) ? "default" : line.absorptionSource(),
                outcome(line.systemicMilligramsPerKilogramDay()),
                line.departure().match(Format::significant, because -> "none entered"),
                margin(line),
                aggregate(line),
                Format.figure(line.leastMargin(), 0),
                line.isBelow(),
                line.isBelowTogether(),
                line.source());
    }

    /** The reason stands in the column of what is missing. */
    private static String margin(SafetyLine line) {
        return line.margin().match(Format::significant, because -> "not known");
    }

    /** Empty for what is no preservative. */
    private static String aggregate(SafetyLine line) {
        return line.aggregateMargin()
                .match(Format::significant, because -> because.startsWith("reckoned for") ? "" : "not known");
    }

    private static String outcome(Outcome<Double> one) {
        return one.match(Format::significant, because -> "not known");
    }
}
