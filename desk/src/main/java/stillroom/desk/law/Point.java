package stillroom.desk.law;

import java.util.ArrayList;
import java.util.List;
import stillroom.desk.shell.FindingWords;
import stillroom.formulary.change.LawChange;
import stillroom.formulary.change.LawChange.Reweighed;
import stillroom.formulary.evaluation.Finding;

/**
 * One thing that changes for one formula.
 *
 * @param what happens, as a word or two
 * @param rule id of the rule; empty where it is the label
 * @param says in a sentence
 */
record Point(String what, String rule, String says) {
    /** How much a formula is touched; the gravest first. */
    enum Weight {
        WORSE("new breach or probable fault"),
        OTHER("findings change"),
        LABEL("only the label changes"),
        NONE("nothing changes");

        private final String words;

        Weight(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    static Weight weight(LawChange change) {
        boolean worse = change.appeared().stream()
                        .anyMatch(finding -> finding.kind().isWarning())
                || change.reweighed().stream()
                        .anyMatch(one -> one.isWorse() && one.after().kind().isWarning());
        if (worse) {
            return Weight.WORSE;
        }
        if (!change.appeared().isEmpty()
                || !change.gone().isEmpty()
                || !change.reweighed().isEmpty()) {
            return Weight.OTHER;
        }
        return change.label().isEmpty() ? Weight.NONE : Weight.LABEL;
    }

    /** All that changes, gravest first; rows that turn without changing anything are left out. */
    static List<Point> of(LawChange change) {
        List<Point> points = new ArrayList<>();
        change.appeared()
                .forEach(finding -> points.add(new Point("New: " + word(finding), finding.rule(), finding.says())));
        for (Reweighed one : change.reweighed()) {
            String what = capital(word(one.before())) + " becomes " + word(one.after());
            points.add(new Point(what, one.after().rule(), one.after().says()));
        }
        change.gone()
                .forEach(finding -> points.add(new Point("Gone: " + word(finding), finding.rule(), finding.says())));
        label(points, "Label gains", change.label().namesAdded());
        label(points, "Label loses", change.label().namesGone());
        label(points, "Label gains the warning", change.label().warningsAdded());
        label(points, "Label loses the warning", change.label().warningsGone());
        return List.copyOf(points);
    }

    private static void label(List<Point> points, String what, List<String> words) {
        if (!words.isEmpty()) {
            points.add(new Point(what, "", String.join("; ", words)));
        }
    }

    private static String word(Finding finding) {
        return FindingWords.of(finding);
    }

    private static String capital(String word) {
        return word.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + word.substring(1);
    }
}
