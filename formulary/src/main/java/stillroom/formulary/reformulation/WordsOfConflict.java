package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stillroom.science.blend.Explanation;
import stillroom.science.blend.Mix;

/** What stands against each other, and what it costs, in the maker's words. */
final class WordsOfConflict {
    private final Problem problem;

    WordsOfConflict(Problem problem) {
        this.problem = problem;
    }

    List<String> conflict(Explanation why) {
        return why.conflict().stream().map(this::words).distinct().toList();
    }

    private String words(stillroom.science.blend.Requirement requirement) {
        int of = requirement.of();
        return switch (requirement.kind()) {
            case LEAST_DOSE ->
                ingredient(of) + " is used from "
                        + percent(problem.blend().ingredients().get(of).leastIfUsed()) + " on";
            case PRESENCE -> ingredient(of) + " stays in";
            case MOST ->
                problem.blend().ingredients().get(of).most() == 0
                        ? ingredient(of) + " may not be used"
                        : ingredient(of) + " is at most "
                                + percent(problem.blend().ingredients().get(of).most());
            case USE_LIMIT -> problem.blend().useLimits().get(of).name();
            case LIMIT_MIN -> bound(of, true, problem.requirements().get(of).min());
            case LIMIT_MAX -> bound(of, false, problem.requirements().get(of).max());
        };
    }

    private String bound(int of, boolean low, double bound) {
        Requirement requirement = problem.requirements().get(of);
        if (requirement.kind() == Requirement.Kind.MEAN) {
            return requirement.name() + ", stays in its band";
        }
        String unit = requirement.unit().isEmpty() ? "" : " " + requirement.unit();
        String law = requirement.kind() == Requirement.Kind.LAW ? " (law)" : "";
        return requirement.name() + (low ? " at least " : " at most ") + figure(bound) + unit + law;
    }

    /** Only what the maker may move: not the law. */
    List<String> reliefs(Explanation why) {
        List<String> words = new ArrayList<>();
        why.alone().stream()
                .filter(relief -> isTheMakers(relief.requirement()))
                .forEach(relief -> words.add("Allow " + relief(relief) + "."));
        boolean allTheMakers = why.together().stream().allMatch(relief -> isTheMakers(relief.requirement()));
        if (why.together().size() > 1 && allTheMakers) {
            words.add("Allow together "
                    + String.join(
                            ", and ", why.together().stream().map(this::relief).toList()) + ".");
        }
        return words;
    }

    private boolean isTheMakers(stillroom.science.blend.Requirement requirement) {
        return switch (requirement.kind()) {
            case LIMIT_MIN, LIMIT_MAX ->
                problem.requirements().get(requirement.of()).kind() == Requirement.Kind.FIGURE;
            case LEAST_DOSE, PRESENCE, MOST, USE_LIMIT -> true;
        };
    }

    private String relief(Explanation.Relief relief) {
        int of = relief.requirement().of();
        return switch (relief.requirement().kind()) {
            case LEAST_DOSE -> "as little as " + percent(relief.to()) + " of " + ingredient(of);
            case PRESENCE -> "it without " + ingredient(of);
            case MOST -> percent(relief.to()) + " of " + ingredient(of);
            case USE_LIMIT -> (int) relief.to() + " ingredients";
            case LIMIT_MIN -> lower(bound(of, true, relief.to()));
            case LIMIT_MAX -> lower(bound(of, false, relief.to()));
        };
    }

    private static String lower(String words) {
        return words.startsWith("pH") ? words : Character.toLowerCase(words.charAt(0)) + words.substring(1);
    }

    /** What moving a binding bound would save, for the goal of a low cost. */
    List<String> prices(Mix mix, Goal goal) {
        List<String> words = new ArrayList<>();
        if (!goal.asksCost()) {
            return words;
        }
        for (int i = 0; i < problem.requirements().size(); i++) {
            Requirement requirement = problem.requirements().get(i);
            double price = mix.prices().get(i) * problem.presentCost() / goal.cost() * 0.1;
            boolean told = requirement.kind() != Requirement.Kind.MEAN
                    && requirement.unit().equals("%")
                    && Math.abs(price) >= 0.0005;
            if (told) {
                words.add(String.format(
                        Locale.ROOT,
                        "Each 0.1 %% more of %s %s %.3f per 100 g.",
                        Character.toLowerCase(requirement.name().charAt(0))
                                + requirement.name().substring(1),
                        price > 0 ? "costs" : "saves",
                        Math.abs(price)));
            }
        }
        return words;
    }

    private String ingredient(int of) {
        return problem.candidates().get(of).card().name();
    }

    private static String percent(double fraction) {
        return figure(100 * fraction) + " %";
    }

    private static String figure(double value) {
        return java.math.BigDecimal.valueOf(value)
                .setScale(3, java.math.RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }
}
