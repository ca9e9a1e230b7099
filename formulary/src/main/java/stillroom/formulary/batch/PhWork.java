package stillroom.formulary.batch;

import java.util.Optional;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Interval;

/** What the product's pH band asks for: read after a correction, correct after a reading outside. */
record PhWork(BatchState state, Optional<Interval> band) {

    /** For a line that is added up to the pH and was not accepted as it is. */
    Optional<NextAction> of(PlannedLine line, String vessel) {
        if (band.isEmpty() || !state.fills().isEmpty()) {
            return Optional.empty();
        }
        return correcting(vessel, Optional.of(line)).or(() -> reading(vessel));
    }

    /** Where no line of the formula is added up to the pH. */
    Optional<NextAction> outsideTheFormula(Formula formula, String vessel) {
        boolean byALine = formula.lines().stream().anyMatch(PhWork::toPh);
        if (band.isEmpty() || !state.fills().isEmpty() || byALine) {
            return Optional.empty();
        }
        return correcting(vessel, Optional.empty()).or(() -> reading(vessel));
    }

    boolean insideAsRead() {
        return band.flatMap(wanted -> PhStanding.last(state, wanted))
                .filter(PhStanding::inside)
                .isPresent();
    }

    static boolean toPh(Line line) {
        return line.amount() instanceof Amount.ToReading amount && amount.reading() == ReadingKind.PH;
    }

    private Optional<NextAction> correcting(String vessel, Optional<PlannedLine> line) {
        return band.flatMap(wanted -> PhStanding.last(state, wanted))
                .filter(standing -> standing.holds(state) && !standing.inside())
                .map(standing -> new NextAction.Correct(vessel, standing, line));
    }

    private Optional<NextAction> reading(String vessel) {
        int corrected = PhStanding.lastCorrection(state);
        boolean unread = corrected > 0
                && corrected == PhStanding.lastChange(state)
                && band.flatMap(wanted -> PhStanding.last(state, wanted))
                        .filter(standing -> standing.holds(state))
                        .isEmpty();
        return unread ? Optional.of(new NextAction.ReadPh(vessel)) : Optional.empty();
    }
}
