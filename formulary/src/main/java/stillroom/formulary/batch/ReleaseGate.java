package stillroom.formulary.batch;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.Problem;
import stillroom.formulary.concern.Concern;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.formula.Step;
import stillroom.formulary.quantity.Interval;

/**
 * One thing that stands before the release of a batch.
 *
 * @param name stable name, such as {@code ph}
 * @param met whether it is fulfilled; if not, it may be overruled by name and reason
 * @param says what was found, one sentence
 */
public record ReleaseGate(String name, boolean met, String says) {
    /** More than this unaccounted for, or more out than in by a hundredth, asks for a word. Common practice, no source. */
    private static final BigDecimal MOST_LOSS_PERCENT = BigDecimal.TEN;

    private static final BigDecimal MOST_GAIN_PERCENT = BigDecimal.ONE.negate();

    /**
     * All gates of a batch.
     *
     * @param holds how long everything stood
     * @param labelOpen what the label lacks and where this batch's would differ from the version's; empty where it was
     *     checked, is complete and agrees
     */
    public static List<ReleaseGate> of(
            BatchState state, AsMade made, Formula formula, Brief brief, List<String> labelOpen, List<Hold> holds) {
        List<ReleaseGate> gates = new ArrayList<>();
        brief.phBand().ifPresent(band -> gates.add(ph(state, band)));
        gates.add(results(state));
        gates.add(deviations(state, made));
        gates.add(listed(
                "holds",
                unexplained(state, holds),
                "Nothing stood longer than it may, or the reason is given.",
                "Stood too long, no reason given"));
        content(state).ifPresent(gates::add);
        gates.add(steps(state, formula));
        gates.add(listed("label", labelOpen, "The label is complete and fits this batch.", "The label is open"));
        gates.add(loss(Yield.of(state)));
        gates.add(clean(state));
        gates.add(listed("record", missing(state), "The record is complete.", "The record lacks"));
        return List.copyOf(gates);
    }

    /** Gates that are neither met nor overruled by the decision. */
    public static List<Problem> problems(List<ReleaseGate> gates, BatchEvent.Decided event) {
        if (event.decision() != BatchEvent.Decision.RELEASED) {
            return List.of();
        }
        return gates.stream()
                .filter(gate -> !gate.met() && event.overruled().stream().noneMatch(gate::isOverruledBy))
                .map(gate -> new Problem("overruled", gate.says() + " Mend it, or give a reason for going on."))
                .toList();
    }

    /** How an overruling is written: the gate's name, a colon and the reason. */
    public static String overruling(String gate, String reason) {
        return gate + ": " + reason;
    }

    private boolean isOverruledBy(String overruling) {
        return overruling.startsWith(name + ": ")
                && !overruling.substring(name.length() + 2).isBlank();
    }

    private static ReleaseGate ph(BatchState state, Interval band) {
        List<Logged<BatchEvent.ReadingTaken>> read = state.readings(ReadingKind.PH).stream()
                .filter(reading -> reading.event().value().isPresent())
                .toList();
        if (read.isEmpty()) {
            return new ReleaseGate("ph", false, "No pH was read.");
        }
        double last = read.get(read.size() - 1).event().value().orElseThrow();
        String found = "The last pH was " + last + ", the band is " + band.low() + " to " + band.high() + ".";
        return new ReleaseGate("ph", band.contains(last), found);
    }

    /** A deviation is explained by accepting the line, or by the note of one of its pours. */
    private static ReleaseGate deviations(BatchState state, AsMade made) {
        List<String> open = new ArrayList<>(offTarget(state, made));
        made.hotPours().stream()
                .filter(hot -> !hot.explained(state))
                .map(hot -> hot.pour().event().materialKey() + " (" + hot.says() + ")")
                .forEach(open::add);
        return listed("deviations", open, "Every deviation is explained.", "Not explained");
    }

    private static List<String> offTarget(BatchState state, AsMade made) {
        return made.deviations().stream()
                .map(MadeLine::lineId)
                .filter(id -> !state.accepted().containsKey(id))
                .filter(id -> state.pours().stream()
                        .map(Logged::event)
                        .noneMatch(pour -> pour.lineId().filter(id::equals).isPresent()
                                && !pour.note().isBlank()))
                .map(id -> made.line(id).map(MadeLine::materialKey).orElse(id))
                .toList();
    }

    private static ReleaseGate steps(BatchState state, Formula formula) {
        List<String> open = formula.phases().stream()
                .flatMap(phase -> phase.steps().stream())
                .filter(step -> state.steps().stream()
                        .noneMatch(done ->
                                done.event().stepId().filter(step.id()::equals).isPresent()))
                .map(Step::doing)
                .toList();
        return listed("steps", open, "Every step is logged.", "Not logged");
    }

    private static ReleaseGate loss(Yield yield) {
        Optional<BigDecimal> loss = yield.lossPercent();
        boolean met = loss.filter(percent -> percent.compareTo(MOST_LOSS_PERCENT) <= 0)
                .filter(percent -> percent.compareTo(MOST_GAIN_PERCENT) >= 0)
                .isPresent();
        return new ReleaseGate(
                "yield",
                met,
                loss.map(percent -> VesselRules.shown(yield.unaccounted()) + " g are unaccounted for, "
                                + percent.setScale(1, RoundingMode.HALF_EVEN).toPlainString() + " %.")
                        .orElse("Nothing was weighed in."));
    }

    private static ReleaseGate results(BatchState state) {
        List<String> open = state.concerns().stops(Concern.Stop.AWAIT).stream()
                .map(stop -> stop.concern().reason())
                .toList();
        return listed("results", open, "No result is awaited.", "Still awaited");
    }

    /** Overruns whose reason nobody gave. */
    private static List<String> unexplained(BatchState state, List<Hold> holds) {
        return holds.stream()
                .filter(hold -> hold.over() && hold.reason(state).isEmpty())
                .map(Hold::says)
                .toList();
    }

    /** The last fill check, where containers were weighed one by one. */
    private static Optional<ReleaseGate> content(BatchState state) {
        return state.concerns().fillChecks().stream()
                .reduce((earlier, later) -> later)
                .map(entry -> {
                    FillCheck check = FillCheck.of(
                            entry.concern().nominal(),
                            entry.concern().net(),
                            entry.concern().tareDeviation());
                    return listed(
                            "content",
                            check.passes() ? List.of() : check.says(),
                            "The containers weighed hold what is declared.",
                            "Content");
                });
    }

    private static ReleaseGate clean(BatchState state) {
        List<String> open = state.vessels().stream()
                .filter(vessel -> vessel.clean().isBlank() && vessel.asItIs().isEmpty())
                .map(Vessel::name)
                .toList();
        List<String> reasons = state.vessels().stream()
                .flatMap(vessel -> vessel.asItIs().stream().map(why -> vessel.name() + ", because " + why))
                .toList();
        String good = "Every vessel's cleaning is noted.";
        return listed(
                "clean",
                open,
                reasons.isEmpty() ? good : good + " Used without sanitising: " + String.join("; ", reasons) + ".",
                "No cleaning noted for");
    }

    private static List<String> missing(BatchState state) {
        List<String> missing = new ArrayList<>();
        if (state.fills().isEmpty()) {
            missing.add("a fill");
        }
        if (state.rest().isPresent()) {
            missing.add("the end of the rest");
        }
        state.timers()
                .forEach(timer ->
                        missing.add("the end of the timer " + timer.event().label()));
        state.pours().stream()
                .map(Logged::event)
                .filter(pour -> pour.lot().isEmpty())
                .map(pour -> "the lot of " + pour.materialKey())
                .distinct()
                .forEach(missing::add);
        return missing;
    }

    private static ReleaseGate listed(String name, List<String> open, String good, String bad) {
        return new ReleaseGate(
                name, open.isEmpty(), open.isEmpty() ? good : bad + ": " + String.join(", ", open) + ".");
    }
}
