package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import stillroom.desk.shell.Decimals;
import stillroom.desk.shell.Input;

/** What the people of a panel gave one beaker: figures with blanks between, of which the mean is fitted. */
final class Scores {
    private static final double MOST = 1e9;

    private Scores() {}

    /** The figures in a field; none where it is empty or refused. */
    static List<Double> read(Input input, String field, String what) {
        List<Double> scores = new ArrayList<>();
        for (String part : input.text(field).split("[;\\s]+")) {
            if (part.isEmpty()) {
                continue;
            }
            double score =
                    Decimals.read(part).map(figure -> figure.doubleValue()).orElse(Double.NaN);
            if (!(Math.abs(score) <= MOST)) {
                input.refuse(
                        field,
                        what + ": \u201c" + part
                                + "\u201d is not a number. One score per person, blanks between: 6 7 5.5.");
                return List.of();
            }
            scores.add(score);
        }
        return scores;
    }

    static double mean(List<Double> scores) {
        return scores.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    static String typed(List<Double> scores) {
        return scores.stream().map(TrialPage::plain).collect(Collectors.joining(" "));
    }

    /** Mean and spread in words; empty for a single score. */
    static String words(List<Double> scores) {
        if (scores.size() < 2) {
            return "";
        }
        double mean = mean(scores);
        double squares =
                scores.stream().mapToDouble(one -> (one - mean) * (one - mean)).sum();
        return scores.size() + " scores, mean " + Words.figure(mean) + ", spread (s) "
                + Words.figure(Math.sqrt(squares / (scores.size() - 1)));
    }
}
