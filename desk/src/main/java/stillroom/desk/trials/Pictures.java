package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.List;
import stillroom.desk.shell.Format;
import stillroom.formulary.trial.TrialSet;

/** Names and mixtures as the maker reads them. */
final class Pictures {
    private final TrialSet set;

    Pictures(TrialSet set) {
        this.set = set;
    }

    /** x1, x2 ... replaced by the maker's names. */
    String named(String sentence) {
        String said = sentence;
        for (int i = set.components().size(); i >= 1; i--) {
            said = said.replace("x" + i, set.components().get(i - 1).name());
        }
        for (int k = set.variables().size(); k >= 1; k--) {
            said = said.replace("w" + k, set.variables().get(k - 1).name());
        }
        return said;
    }

    /** A mixture in words: each component in percent of the formula, then the settings. */
    List<String> mixture(double[] point) {
        List<String> words = new ArrayList<>();
        int q = set.components().size();
        for (int i = 0; i < q; i++) {
            words.add(set.components().get(i).name() + " " + percent(point[i]) + " %");
        }
        for (int k = 0; k < set.variables().size(); k++) {
            TrialSet.Variable variable = set.variables().get(k);
            words.add(variable.name() + " " + Words.figure(Region.actual(variable, point[q + k])));
        }
        return words;
    }

    String percent(double fraction) {
        return Format.figure(fraction * set.share(), 2);
    }
}
