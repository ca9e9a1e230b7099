package stillroom.desk.trials;

import java.util.List;
import java.util.Locale;
import stillroom.desk.shell.Choice;
import stillroom.formulary.trial.TrialSet;
import stillroom.science.mixture.Blending;
import stillroom.science.trial.Fitting;

/** Words and figures of the trials' pages. */
final class Words {
    static final List<Choice> MODELS = List.of(
            new Choice(Blending.LINEAR.name(), "linear: each line acts alone"),
            new Choice(Blending.QUADRATIC.name(), "quadratic: pairs act together"),
            new Choice(Blending.SPECIAL_CUBIC.name(), "special cubic: pairs and threes act together"));

    static final List<Choice> SELECTIONS = List.of(
            new Choice(Fitting.Selection.NONE.name(), "keep all terms"),
            new Choice(Fitting.Selection.BACKWARD.name(), "leave out terms with p above 0.1"),
            new Choice(Fitting.Selection.AKAIKE.name(), "leave out what does not pay (AICc)"));

    private Words() {}

    /** How the runs of a set were chosen, in one line. */
    static String design(TrialSet set) {
        String kind = switch (Kind.valueOf(set.design().criterion())) {
            case I -> "chosen for good predictions over the whole region";
            case D -> "chosen so that each line's own effect is told sharply";
            case LATTICE -> "a simplex lattice";
            case CENTROID -> "a simplex centroid";
        };
        return set.runs().size() + " runs, " + kind + "; the model is "
                + set.design().model().toLowerCase(Locale.ROOT).replace('_', ' ') + ".";
    }

    static String aim(TrialSet.Aim aim) {
        return switch (aim) {
            case NONE -> "only watched";
            case LARGER -> "the more, the better";
            case SMALLER -> "the less, the better";
            case TARGET -> "as near the target as can be";
        };
    }

    /** Four significant digits, without a power of ten where it can be helped. */
    static String figure(double value) {
        if (!Double.isFinite(value)) {
            return "not known";
        }
        if (value == 0) {
            return "0";
        }
        // Rounded first: 999.99 has four digits as 1000, not as 1000.0.
        double rounded = Math.abs(Double.parseDouble(String.format(Locale.ROOT, "%.3e", value)));
        int decimals = Math.max(0, Math.min(6, 3 - (int) Math.floor(Math.log10(rounded))));
        String text = String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(value));
        boolean nothing = text.chars().allMatch(c -> c == '0' || c == '.');
        return (value < 0 && !nothing ? "\u2212" : "") + text;
    }

    static String probability(double p) {
        return p < 0.0001 ? "under 0.0001" : String.format(Locale.ROOT, "%.4f", p);
    }
}
