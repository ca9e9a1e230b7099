package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.List;
import stillroom.science.blend.Explanation;

/** What stands against each other, in the maker's words. */
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
        if (requirement.mean().isPresent()) {
            Requirement.Mean mean = requirement.mean().get();
            return requirement.name() + (mean.isLeast() ? " at least " : " at most ") + figure(mean.bound());
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

    /** A name within a sentence; what begins with an abbreviation stays. */
    static String lower(String words) {
        boolean abbreviated = words.startsWith("pH") || words.length() > 1 && Character.isUpperCase(words.charAt(1));
        return abbreviated ? words : Character.toLowerCase(words.charAt(0)) + words.substring(1);
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
