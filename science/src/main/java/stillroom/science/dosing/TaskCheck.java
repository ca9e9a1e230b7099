package stillroom.science.dosing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import stillroom.science.dosing.Refusal.Kind;

/** What must be right before anything is fitted. */
final class TaskCheck {

    private final DosingTask task;
    private final List<Refusal> refusals = new ArrayList<>();

    private TaskCheck(DosingTask task) {
        this.task = task;
    }

    static List<Refusal> refusals(DosingTask task) {
        TaskCheck check = new TaskCheck(task);
        check.corrector(task.corrector());
        check.masses();
        check.pHs();
        if (task.readings().size() < 2) {
            check.refuse(
                    Kind.TOO_FEW_READINGS,
                    "%d reading: a dose needs one before and at least one after an addition",
                    task.readings().size());
        }
        if (check.refusals.isEmpty()) {
            check.order(Vessel.SAMPLE);
            check.order(Vessel.BULK);
        }
        return List.copyOf(check.refusals);
    }

    private void refuse(Kind kind, String format, Object... figures) {
        refusals.add(new Refusal(kind, String.format(Locale.ROOT, format, figures)));
    }

    private void corrector(Corrector corrector) {
        if (!corrector.hasStrength()) {
            refuse(
                    Kind.NO_STRENGTH,
                    "%s has no strength: enter how much acid or base a kilogram of it holds",
                    corrector.name());
        }
    }

    private void masses() {
        if (!(task.bulkGrams() > 0)) {
            refuse(Kind.IMPOSSIBLE_MASS, "the bulk weighs %s g: enter what is in the vessel", task.bulkGrams());
        }
        for (PhReading reading : task.readings()) {
            reading.additions().forEach(addition -> corrector(addition.corrector()));
            if (!(reading.liquidGrams() > 0)) {
                refuse(
                        Kind.IMPOSSIBLE_MASS,
                        "a reading in %s g of liquid: enter what was weighed",
                        reading.liquidGrams());
            } else if (reading.vessel() == Vessel.SAMPLE && reading.liquidGrams() > task.bulkGrams()) {
                refuse(
                        Kind.SAMPLE_EXCEEDS_BULK,
                        "the sample of %s g is heavier than the bulk of %s g: one of the two is mistyped",
                        reading.liquidGrams(),
                        task.bulkGrams());
            }
        }
    }

    private void pHs() {
        task.readings().forEach(reading -> pH("reading", reading.pH()));
        pH("target", task.targetPh());
        if (!(task.halfBand() > 0)) {
            refuse(Kind.IMPOSSIBLE_PH, "the band is %s pH to either side: it must be above 0", task.halfBand());
        }
    }

    private void pH(String what, double pH) {
        if (!(pH >= 0.5 && pH <= 13.5)) {
            refuse(Kind.IMPOSSIBLE_PH, "a %s of pH %s: allowed are 0.5 to 13.5", what, pH);
        }
    }

    private void order(Vessel vessel) {
        List<PhReading> readings =
                task.readings().stream().filter(r -> r.vessel() == vessel).toList();
        for (int i = 0; i < readings.size(); i++) {
            for (int j = 0; j < i; j++) {
                pair(readings.get(j), readings.get(i), i == j + 1);
            }
        }
    }

    private void pair(PhReading before, PhReading after, boolean neighbours) {
        if (before.liquidGrams() != after.liquidGrams()) {
            return; // another sample
        }
        if (before.additions().equals(after.additions())) {
            refuse(
                    Kind.IDENTICAL_ADDITIONS,
                    "pH %s and %s both at %s g added: additions are entered as the sum so far; keep the steadier reading",
                    before.pH(),
                    after.pH(),
                    before.addedGrams());
        } else if (neighbours) {
            direction(before, after);
        }
    }

    private void direction(PhReading before, PhReading after) {
        boolean mayFall = false;
        boolean mayRise = false;
        for (Addition addition : after.additions()) {
            double poured = gramsOf(addition.corrector(), after) - gramsOf(addition.corrector(), before);
            mayFall |= poured != 0 && addition.corrector().lowersPh() == poured > 0;
            mayRise |= poured != 0 && addition.corrector().lowersPh() != poured > 0;
        }
        double allowed = 3 * task.instrument().repeatability();
        double moved = after.pH() - before.pH();
        if ((!mayRise && moved > allowed) || (!mayFall && moved < -allowed)) {
            refuse(
                    Kind.WRONG_WAY,
                    "from %s to %s g added the pH went from %s to %s, against the corrector and by more than 3 times the "
                            + "repeatability of %s: stir, wait, read again, look at the electrode",
                    before.addedGrams(),
                    after.addedGrams(),
                    before.pH(),
                    after.pH(),
                    task.instrument().repeatability());
        }
    }

    private static double gramsOf(Corrector corrector, PhReading reading) {
        return reading.additions().stream()
                .filter(addition -> Objects.equals(addition.corrector(), corrector))
                .mapToDouble(Addition::grams)
                .sum();
    }
}
