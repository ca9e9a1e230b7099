package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.reformulation.Answer.Change;
import stillroom.formulary.reformulation.Answer.Compared;

/** What an answer gives up, in words: what gets dearer, which figures leave the middle of their bands, which findings are new. */
final class GivingUp {
    private static final double MONEY = 0.0005;
    private static final double NATURAL = 0.05;
    /** A figure that has moved by less of its band has stayed. */
    private static final double MOVED = 0.1;
    /** Formulas are written to a thousandth of a percent, so that an edge is met to about that. */
    private static final double AT_EDGE = 0.995;

    private final Problem problem;
    private final List<Double> fractions;

    GivingUp(Problem problem, List<Double> fractions) {
        this.problem = problem;
        this.fractions = fractions;
    }

    List<String> words(List<Compared> figures, List<Change> changes, List<Finding> arisen, List<Finding> grave) {
        List<String> words = new ArrayList<>();
        dearer(figures, words);
        problem.requirements().forEach(requirement -> moved(requirement, words));
        shelf(changes, words);
        leftOver(changes, words);
        arisen.stream()
                .filter(finding -> finding.kind() != Finding.Kind.CANNOT_JUDGE
                        && (finding.kind().isWarning() || grave.contains(finding)))
                .map(Finding::says)
                .forEach(words::add);
        long more = arisen.stream()
                .filter(finding -> finding.kind() == Finding.Kind.CANNOT_JUDGE)
                .count();
        if (more > 0) {
            words.add("The evaluation cannot judge " + (more == 1 ? "one thing" : more + " things")
                    + " of it that it can judge now, or not for the same reason.");
        }
        return words.stream().distinct().toList();
    }

    private void dearer(List<Compared> figures, List<String> words) {
        for (Compared figure : figures) {
            double by = figure.after() - figure.before();
            boolean dearer = figure.name().equals(Requirements.COST) && by > MONEY;
            boolean lessNatural = figure.name().equals(Requirements.NATURAL) && by < -NATURAL;
            if (dearer || lessNatural) {
                String pattern = lessNatural ? "%s goes from %.2f to %.2f %%." : "%s goes from %.3f to %.3f%s.";
                String name = problem.present().currency();
                String currency = name.isEmpty() ? "" : " " + name;
                words.add(
                        String.format(Locale.ROOT, pattern, figure.name(), figure.before(), figure.after(), currency));
            }
        }
    }

    private void moved(Requirement requirement, List<String> words) {
        requirement.band().filter(band -> band.room() > 0).ifPresent(band -> {
            double value = requirement.of(fractions);
            double part = Math.abs(value - band.at()) / band.room();
            if (part >= MOVED) {
                words.add(requirement.name() + " goes from " + Wording.with(band.at(), "") + " to "
                        + Wording.with(value, requirement.unit())
                        + (part >= AT_EDGE ? ", the edge of its band." : "."));
            }
        });
    }

    /** Lines that stay as they are do not ask the shelf, nor does what was allowed by name. */
    private void shelf(List<Change> changes, List<String> words) {
        problem.shelf()
                .batchGrams()
                .ifPresent(grams -> changes.forEach(change -> {
                    double needs = grams * change.after() / 100;
                    double there = problem.shelf().onHand().getOrDefault(change.materialKey(), 0.0);
                    if (needs > there * (1 + 1e-4)) {
                        words.add("The shelf holds " + Wording.figure(there, 1) + " g of " + change.name()
                                + "; the batch needs " + Wording.figure(needs, 1) + " g.");
                    }
                }));
    }

    /** What was to be used up and is not. */
    private void leftOver(List<Change> changes, List<String> words) {
        for (Map.Entry<String, Double> each : problem.shelf().onHand().entrySet()) {
            if (problem.wish().useUp().contains(each.getKey())) {
                double uses = changes.stream()
                        .filter(change -> change.materialKey().equals(each.getKey()))
                        .mapToDouble(Change::after)
                        .sum();
                String name = problem.candidates().stream()
                        .filter(one -> one.key().equals(each.getKey()))
                        .map(one -> one.card().name())
                        .findFirst()
                        .orElse(each.getKey());
                if (uses == 0) {
                    words.add(name + " is not used: nothing of it fits within the bands.");
                } else if (problem.shelf().batchGrams().isPresent()) {
                    double left = each.getValue() - problem.shelf().batchGrams().getAsDouble() * uses / 100;
                    if (left > 1) {
                        words.add(Wording.figure(left, 0) + " g of " + name + " stay on the shelf.");
                    }
                }
            }
        }
    }
}
