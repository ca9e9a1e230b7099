package stillroom.formulary.evaluation;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.quantity.Interval;

/**
 * What is judged: a draft, a kept version, or what was really made. One function judges all three.
 *
 * @param brief what the product is meant to be
 * @param portions as added, in working order; their shares need not add up to 1 in a draft
 * @param phases the procedure, empty where there is none (free-hand batches)
 * @param waterLostFraction water lost by evaporation per mass as added, 0 to 1
 * @param measuredPh the real pH, where it was read
 * @param found what was already noticed while the amounts were resolved (two q.s. lines, a line at 0 %)
 */
public record Subject(
        Brief brief,
        List<Portion> portions,
        List<Phase> phases,
        double waterLostFraction,
        Optional<Interval> measuredPh,
        List<Finding> found) {
    public Subject {
        portions = List.copyOf(portions);
        phases = List.copyOf(phases);
        found = List.copyOf(found);
    }

    /** What was really made, or anything else whose amounts needed no resolving. */
    public Subject(
            Brief brief,
            List<Portion> portions,
            List<Phase> phases,
            double waterLostFraction,
            Optional<Interval> measuredPh) {
        this(brief, portions, phases, waterLostFraction, measuredPh, List.of());
    }

    /** The same as if its pH had not been read: what the composition alone lets one expect. */
    public Subject unread() {
        return new Subject(brief, portions, phases, waterLostFraction, Optional.empty(), found);
    }
}
