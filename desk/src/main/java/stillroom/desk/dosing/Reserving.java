package stillroom.desk.dosing;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.dosing.DosingPage.Reserve;
import stillroom.desk.shell.Input;
import stillroom.formulary.dosing.DosedBefore;
import stillroom.formulary.dosing.PhSession;
import stillroom.formulary.dosing.ReservedCorrection;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.science.dosing.Dose;

/** Reserving a correction in the formula: this dose and the last five times make the expected amount and its range. */
record Reserving(BatchWork work, PhSession session, DosingAsk ask) {

    /** At least half and one and a half times the expected amount are reckoned with. Common practice, no source. */
    private static final double HALF = 0.5;

    /** None for free-hand batches, and before anything is known of the dose. */
    Optional<Reserve> offer(Optional<Dose> dose) {
        double poured = session.now().additions().stream()
                .filter(one -> one.materialKey().equals(ask.corrector()))
                .mapToDouble(one -> one.mass().doubleValue())
                .sum();
        double whole = session.now().grams();
        if (work.version().isEmpty() || whole <= 0 || (dose.isEmpty() && poured <= 0)) {
            return Optional.empty();
        }
        double expected = poured + dose.map(Dose::gramsToTarget).orElse(0.0);
        double low = poured + dose.map(Dose::lowGrams).orElse(0.0);
        double high = poured + dose.map(Dose::highGrams).orElse(0.0);
        double total = whole + expected - poured;
        List<Double> before = new EarlierBatches(work)
                .dosed().stream()
                        .filter(one -> one.materialKey().equals(ask.corrector()))
                        .map(DosedBefore::percent)
                        .map(percent -> percent.value().doubleValue())
                        .toList();
        ReservedCorrection reserved = ReservedCorrection.of(
                ask.corrector(),
                least(before, 100 * Math.min(low, HALF * expected) / total),
                100 * expected / total,
                most(before, 100 * Math.max(high, (1 + HALF) * expected) / total),
                "");
        return Optional.of(new Reserve(
                reserved.expected().toString(),
                reserved.range().low().toString(),
                reserved.range().high().toString(),
                before.isEmpty() ? "from this batch alone" : "from this batch and " + before.size() + " before it"));
    }

    private static double least(List<Double> before, double now) {
        return DoubleStream.concat(before.stream().mapToDouble(one -> one), DoubleStream.of(now))
                .min()
                .orElse(now);
    }

    private static double most(List<Double> before, double now) {
        return DoubleStream.concat(before.stream().mapToDouble(one -> one), DoubleStream.of(now))
                .max()
                .orElse(now);
    }

    /** The new draft, or problems in the input. */
    Optional<FormulaVersion> make(Input input) {
        Optional<Double> expected = asked(input, "expected", "The expected amount");
        Optional<Double> low = asked(input, "low", "The least");
        Optional<Double> high = asked(input, "high", "The most");
        if (work.version().isEmpty()) {
            input.refuse("reserve", "A batch weighed free hand has no formula to change.");
        }
        if (work.book().material(ask.corrector()).isEmpty()) {
            input.refuse("reserve", "Choose the corrector first.");
        }
        if (!input.isSound() || expected.isEmpty() || low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        if (low.get() > expected.get() || expected.get() > high.get()) {
            input.refuse("expected", "The expected amount must lie between the least and the most.");
            return Optional.empty();
        }
        ReservedCorrection reserved = ReservedCorrection.of(
                ask.corrector(),
                low.get(),
                expected.get(),
                high.get(),
                "up to the pH, as batch " + work.batch().code() + " took");
        reserved.problems(work.formula()).forEach(problem -> input.refuse(problem.field(), problem.sentence()));
        return input.isSound() ? Optional.of(stored(reserved)) : Optional.empty();
    }

    private static Optional<Double> asked(Input input, String field, String what) {
        Optional<Double> typed = input.number(field, what, "0", "100");
        return typed.isEmpty() && !input.hasProblem(field) ? input.refuse(field, what + " is missing.") : typed;
    }

    private FormulaVersion stored(ReservedCorrection reserved) {
        return work.desk()
                .ledger()
                .products()
                .newVersion(
                        work.product().id(),
                        work.batch().version(),
                        reserved.in(work.formula()),
                        "Correction of the pH reserved: " + work.cards().name(ask.corrector()),
                        work.desk().now());
    }
}
