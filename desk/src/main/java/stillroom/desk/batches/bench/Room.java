package stillroom.desk.batches.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.Masses;
import stillroom.formulary.batch.Vessel;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Grams;

/** How much room there is in a vessel for what is to go in. */
final class Room {
    private Room() {}

    /** What a phase and the whole batch weigh, so that the right vessel is taken. */
    static String needs(BatchWork work, String phaseId) {
        Optional<Plan> plan = work.plan();
        if (plan.isEmpty()) {
            return "";
        }
        String whole = "the whole batch " + Masses.shown(plan.get().batch()) + " g";
        Grams phase = planned(plan.get(), List.of(phaseId));
        return phase.isZero()
                ? "To hold: " + whole + "."
                : "To hold: this phase " + Masses.shown(phase) + " g, " + whole + ".";
    }

    private static Grams planned(Plan plan, List<String> phases) {
        return Grams.sum(plan.lines().stream()
                .filter(line -> phases.contains(line.phaseId()))
                .map(PlannedLine::target)
                .toList());
    }

    /** Empty where its capacity is not known. */
    static String of(BatchWork work, Vessel vessel) {
        if (vessel.capacity().isEmpty() || vessel.capacity().get().signum() <= 0) {
            return "";
        }
        Grams capacity = vessel.capacity().get();
        if (vessel.mixture().net().compareTo(capacity) > 0) {
            return "fuller than the " + capacity + " g that it holds";
        }
        if (crowded(work, vessel)) {
            return "holds " + capacity + " g, too little for what is planned";
        }
        BigDecimal full =
                vessel.mixture().net().value().movePointRight(2).divide(capacity.value(), 0, RoundingMode.HALF_UP);
        return full.toPlainString() + " % full, holds " + capacity + " g";
    }

    /** Whether what is in, or what its own phases still bring, is more than it holds. */
    static boolean crowded(BatchWork work, Vessel vessel) {
        Grams planned = work.plan().map(plan -> planned(plan, vessel.phases())).orElse(Grams.ZERO);
        Grams net = vessel.mixture().net();
        Grams most = planned.compareTo(net) > 0 ? planned : net;
        return vessel.capacity()
                .filter(capacity -> most.compareTo(capacity) > 0)
                .isPresent();
    }
}
