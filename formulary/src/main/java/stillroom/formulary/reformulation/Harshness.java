package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.Family;

/** Whether an answer is harsher or milder than the formula was, and by which figure: those that "no harsher" keeps down. */
final class Harshness {
    private static final Set<String> FIGURES = Set.of(
            FigureNames.activeMatter(ChargeClass.ANIONIC),
            FigureNames.activeMatter(ChargeClass.CATIONIC),
            Requirements.ANIONIC_CHARGE,
            Requirements.CATIONIC_CHARGE);
    /** Parts of what there is that nobody's skin tells apart; common practice, no source. */
    private static final double SAME = 0.005;

    private final List<String> up = new ArrayList<>();
    private final List<String> down = new ArrayList<>();
    private final List<String> same = new ArrayList<>();

    /** Empty where the formula has nothing that bites. */
    static String words(Problem problem, List<Double> fractions) {
        Harshness found = new Harshness();
        problem.requirements().stream()
                .filter(each -> FIGURES.contains(each.name()))
                .forEach(each -> found.look(each, fractions));
        String words = found.words();
        return words.isEmpty() || !hasNewSurfactant(problem, fractions)
                ? words
                : words + " Which surfactant of a class is milder, no figure here tells.";
    }

    private static boolean hasNewSurfactant(Problem problem, List<Double> fractions) {
        for (int j = 0; j < fractions.size(); j++) {
            Candidate one = problem.candidates().get(j);
            if (one.isNewcomer() && fractions.get(j) > 0 && one.card().family() == Family.SURFACTANT) {
                return true;
            }
        }
        return false;
    }

    private void look(Requirement requirement, List<Double> fractions) {
        double was = requirement.band().map(Band::at).orElse(0.0);
        double is = requirement.of(fractions);
        double by = is - was;
        String name = Wording.lower(requirement.name());
        if (Math.abs(by) <= Math.max(SAME, SAME * was)) {
            same.add(name);
        } else {
            (by > 0 ? up : down)
                    .add(name + " from " + Wording.with(was, "") + " to " + Wording.with(is, requirement.unit()));
        }
    }

    private String words() {
        if (up.isEmpty() && down.isEmpty()) {
            return same.isEmpty() ? "" : "Neither harsher nor milder: " + String.join(" and ", same) + " as now.";
        }
        String beside = same.isEmpty() ? "" : "; " + String.join(" and ", same) + " as now";
        if (up.isEmpty() || down.isEmpty()) {
            boolean harsher = down.isEmpty();
            return (harsher ? "Harsher" : "Milder") + " than now: " + String.join(", ", harsher ? up : down) + beside
                    + ".";
        }
        return "Harsher than now by " + String.join(", ", up) + "; milder by " + String.join(", ", down) + beside + ".";
    }
}
