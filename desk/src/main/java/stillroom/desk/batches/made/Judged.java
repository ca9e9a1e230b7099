package stillroom.desk.batches.made;

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

/**
 * A judgement as the page shows it.
 *
 * @param figures what is known; a pH that was read is never called computed
 * @param notKnown figures that are not known, each with the reason
 * @param law as of when and for which market
 */
public record Judged(List<Shown> figures, List<String> notKnown, List<Finding> findings, String law) {
    public Judged {
        figures = List.copyOf(figures);
        notKnown = List.copyOf(notKnown);
        findings = List.copyOf(findings);
    }

    /** One figure. */
    public record Shown(String name, String value, String unit) {}

    static Judged of(Evaluation evaluation) {
        return of(evaluation, evaluation, List.of());
    }

    /**
     * What was judged by the pH that was read; beside it stands what the composition alone lets one expect.
     *
     * @param unread the same, judged without the reading
     */
    static Judged read(Evaluation evaluation, Evaluation unread) {
        List<Shown> read = evaluation
                .figures()
                .ph()
                .match(figure -> List.of(shown("pH, as read", figure, 2, "")), because -> List.of());
        return of(evaluation, unread, read);
    }

    private static Judged of(Evaluation evaluation, Evaluation unread, List<Shown> read) {
        Figures figures = evaluation.figures();
        List<Shown> shown = new ArrayList<>();
        List<String> notKnown = new ArrayList<>();
        shown.add(shown("Water", figures.waterPercent(), 1, "%"));
        Map<String, Figure> active = new TreeMap<>();
        figures.activeMatterPercent().forEach((charge, figure) -> active.put(Format.words(charge), figure));
        active.forEach((charge, figure) -> shown.add(shown("Active, " + charge, figure, 1, "%")));
        shown.addAll(read);
        add("pH, expected", unread.figures().ph(), 1, "", shown, notKnown);
        add("Cost per 100 g", figures.costPer100g(), 2, "", shown, notKnown);
        String law = "Law as recorded on " + Format.day(evaluation.lawRecordedOn()) + ", market " + evaluation.market()
                + ".";
        return new Judged(shown, notKnown, evaluation.findings(), law);
    }

    private static void add(
            String name, Outcome<Figure> outcome, int decimals, String unit, List<Shown> shown, List<String> notKnown) {
        if (outcome instanceof Outcome.Known<Figure> known) {
            shown.add(shown(name, known.value(), decimals, unit));
        } else if (outcome instanceof Outcome.NotKnown<Figure> not) {
            notKnown.add(name + " is not known: " + not.because());
        }
    }

    private static Shown shown(String name, Figure figure, int decimals, String unit) {
        return new Shown(name, Format.range(figure.low(), figure.high(), decimals), unit);
    }
}
