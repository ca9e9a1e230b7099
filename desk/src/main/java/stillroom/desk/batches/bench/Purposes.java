package stillroom.desk.batches.bench;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.desk.batches.BatchWork;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.plan.PlannedLine;

/** Why something is poured, and which materials serve that. */
final class Purposes {
    /** Corrections in the order in which they are offered. */
    static final List<Purpose> CORRECTIONS = List.of(
            Purpose.CORRECTION_ACID,
            Purpose.CORRECTION_BASE,
            Purpose.CORRECTION_THICKENER,
            Purpose.CORRECTION_WATER,
            Purpose.CORRECTION_OTHER);

    private Purposes() {}

    /** A line up to a reading is a correction from the start; all others are the formula. */
    static Purpose of(BatchWork work, PlannedLine line) {
        Optional<Amount.ToReading> amount = work.formula()
                .line(line.lineId())
                .map(Line::amount)
                .filter(Amount.ToReading.class::isInstance)
                .map(Amount.ToReading.class::cast);
        if (amount.isEmpty()) {
            return Purpose.LINE;
        }
        if (amount.get().reading() == ReadingKind.PH) {
            boolean base = work.cards()
                    .card(line.materialKey())
                    .filter(card -> card.family() == Family.BASE)
                    .isPresent();
            return base ? Purpose.CORRECTION_BASE : Purpose.CORRECTION_ACID;
        }
        return amount.get().reading() == ReadingKind.VISCOSITY
                ? Purpose.CORRECTION_THICKENER
                : Purpose.CORRECTION_OTHER;
    }

    static boolean movesPh(Purpose purpose) {
        return purpose == Purpose.CORRECTION_ACID || purpose == Purpose.CORRECTION_BASE;
    }

    /** Whether a material is the first thing one would think of for this. */
    static boolean serves(Purpose purpose, Material card) {
        return families(purpose).contains(card.family());
    }

    private static Set<Family> families(Purpose purpose) {
        return switch (purpose) {
            case CORRECTION_ACID -> Set.of(Family.ACID);
            case CORRECTION_BASE -> Set.of(Family.BASE);
            case CORRECTION_THICKENER -> Set.of(Family.THICKENER, Family.SALT);
            case CORRECTION_WATER -> Set.of(Family.WATER);
            case CORRECTION_OTHER, LINE, MISTAKE -> Set.of();
        };
    }
}
