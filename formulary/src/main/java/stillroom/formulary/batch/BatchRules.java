package stillroom.formulary.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stillroom.formulary.Problem;
import stillroom.formulary.batch.BatchEvent.Decision;
import stillroom.formulary.concern.Concern;
import stillroom.formulary.concern.ConcernRules;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.quantity.Grams;

/**
 * What speaks against entering an event. An empty list means that it may be entered. Nothing is refused merely because
 * the book holds too little: the bottle may be there. Where a reason is asked for, the note gives it.
 */
public final class BatchRules implements BatchEventCases<List<Problem>> {
    private static final double COLDEST_CELSIUS = -40;
    private static final double HOTTEST_CELSIUS = 250;

    private final BatchState state;
    private final BenchFacts facts;
    private final VesselRules vessels;

    private BatchRules(BatchState state, BenchFacts facts) {
        this.state = state;
        this.facts = facts;
        this.vessels = new VesselRules(state);
    }

    public static List<Problem> problems(BatchState state, BatchEvent event, BenchFacts facts) {
        return List.copyOf(event.match(new BatchRules(state, facts)));
    }

    /** After the decision nothing more is done to the batch; what was found out later may still be noted. */
    private List<Problem> work() {
        List<Problem> problems = new ArrayList<>();
        state.decision()
                .ifPresent(decided -> problems.add(new Problem(
                        "batch",
                        "The batch is "
                                + decided.event().decision().name().toLowerCase(Locale.ROOT)
                                + "; strike the decision before working on it.")));
        state.concerns()
                .stop(Concern.Stop.HOLD)
                .ifPresent(hold -> problems.add(new Problem(
                        "batch",
                        "The batch is on hold: " + hold.concern().reason()
                                + ". Lift the hold by name and reason before working on it.")));
        return problems;
    }

    private static List<Problem> written(String field, String text, String sentence) {
        return text.isBlank() ? List.of(new Problem(field, sentence)) : List.of();
    }

    @Override
    public List<Problem> planned(BatchEvent.Planned event) {
        List<Problem> problems = work();
        if (!state.inputs().isEmpty()) {
            problems.add(new Problem("plan", "Weighing has begun; the plan stays as it is."));
        }
        return problems;
    }

    @Override
    public List<Problem> begun(BatchEvent.Begun event) {
        return work();
    }

    @Override
    public List<Problem> vesselReady(BatchEvent.VesselReady event) {
        List<Problem> problems = work();
        problems.addAll(vessels.ready(event));
        problems.addAll(VesselRules.sanitised(event, facts));
        return problems;
    }

    @Override
    public List<Problem> poured(BatchEvent.Poured event) {
        List<Problem> problems = work();
        problems.addAll(new PourRules(state, facts, vessels).problems(event));
        return problems;
    }

    @Override
    public List<Problem> readAgain(BatchEvent.ReadAgain event) {
        boolean weighing = state.pours().stream().anyMatch(pour -> pour.number() == event.entry());
        return weighing
                ? List.of()
                : List.of(new Problem("entry", "Entry " + event.entry() + " is no weighing that counts."));
    }

    @Override
    public List<Problem> lineAccepted(BatchEvent.LineAccepted event) {
        List<Problem> problems = work();
        problems.addAll(written("reason", event.reason(), "Say why the line stays as it is."));
        if (state.plan().flatMap(plan -> plan.line(event.lineId())).isEmpty()) {
            problems.add(new Problem("lineId", "The plan has no such line."));
        }
        return problems;
    }

    @Override
    public List<Problem> replanned(BatchEvent.Replanned event) {
        List<Problem> problems = work();
        problems.addAll(written("reason", event.reason(), "Say why the plan changes."));
        if (state.plan().isEmpty()) {
            problems.add(new Problem("plan", "A batch weighed free hand has no plan to change."));
        }
        return problems;
    }

    @Override
    public List<Problem> lotsNamed(BatchEvent.LotsNamed event) {
        List<Problem> problems = work();
        problems.addAll(new PourRules(state, facts, vessels).problems(event));
        return problems;
    }

    @Override
    public List<Problem> phasesGiven(BatchEvent.PhasesGiven event) {
        List<Problem> problems = work();
        problems.addAll(vessels.inUse("vessel", event.vessel()));
        if (event.phases().isEmpty()) {
            problems.add(new Problem("phase", "Say which phase goes into " + event.vessel() + "."));
        }
        return problems;
    }

    @Override
    public List<Problem> stepDone(BatchEvent.StepDone event) {
        List<Problem> problems = work();
        if (!event.vessel().isBlank()) {
            problems.addAll(vessels.inUse("vessel", event.vessel()));
        }
        problems.addAll(written("doing", event.doing(), "Say what was done."));
        event.celsius().ifPresent(celsius -> problems.addAll(temperature("celsius", celsius)));
        if (event.minutes()
                .filter(minutes -> !(minutes >= 0 && minutes < 100_000))
                .isPresent()) {
            problems.add(new Problem("minutes", "Give the minutes as a number from 0 up."));
        }
        return problems;
    }

    private static List<Problem> temperature(String field, double celsius) {
        return celsius >= COLDEST_CELSIUS && celsius <= HOTTEST_CELSIUS
                ? List.of()
                : List.of(new Problem(field, "A temperature at the bench lies between -40 and 250 °C."));
    }

    @Override
    public List<Problem> timerStarted(BatchEvent.TimerStarted event) {
        boolean running =
                state.timers().stream().anyMatch(timer -> timer.event().timer().equals(event.timer()));
        return running ? List.of(new Problem("timer", "This timer is running already.")) : List.of();
    }

    @Override
    public List<Problem> timerStopped(BatchEvent.TimerStopped event) {
        boolean running =
                state.timers().stream().anyMatch(timer -> timer.event().timer().equals(event.timer()));
        return running ? List.of() : List.of(new Problem("timer", "No such timer is running."));
    }

    @Override
    public List<Problem> combined(BatchEvent.Combined event) {
        List<Problem> problems = work();
        problems.addAll(vessels.inUse("from", event.from()));
        problems.addAll(vessels.inUse("into", event.into()));
        if (event.from().equals(event.into())) {
            problems.add(new Problem("into", "A vessel cannot be emptied into itself."));
        }
        event.fromCelsius().ifPresent(celsius -> problems.addAll(temperature("fromCelsius", celsius)));
        event.intoCelsius().ifPresent(celsius -> problems.addAll(temperature("intoCelsius", celsius)));
        return problems;
    }

    @Override
    public List<Problem> vesselWeighed(BatchEvent.VesselWeighed event) {
        List<Problem> problems = work();
        problems.addAll(vessels.weighedBack(event));
        return problems;
    }

    @Override
    public List<Problem> sampled(BatchEvent.Sampled event) {
        List<Problem> problems = work();
        problems.addAll(vessels.takenOut(event.vessel(), event.mass()));
        return problems;
    }

    @Override
    public List<Problem> readingTaken(BatchEvent.ReadingTaken event) {
        List<Problem> problems = new ArrayList<>();
        if (!event.vessel().isBlank() && state.vessel(event.vessel()).isEmpty()) {
            problems.add(new Problem("vessel", "No vessel is called " + event.vessel() + "."));
        }
        if (event.value().isEmpty() && event.words().isBlank()) {
            problems.add(new Problem("value", "Give the figure that was read, or words."));
        }
        event.value().ifPresent(value -> problems.addAll(value(event.kind(), value)));
        return problems;
    }

    private static List<Problem> value(ReadingKind kind, double value) {
        if (!Double.isFinite(value)) {
            return List.of(new Problem("value", "This is not a number."));
        }
        return switch (kind) {
            case PH ->
                value >= 0 && value <= 14
                        ? List.of()
                        : List.of(new Problem("value", "A pH at the bench lies between 0 and 14."));
            case TEMPERATURE -> temperature("value", value);
            case VISCOSITY, DENSITY ->
                value > 0 ? List.of() : List.of(new Problem("value", "This reading is above 0."));
            case SHADE, APPEARANCE, ODOUR, OTHER -> List.of();
        };
    }

    @Override
    public List<Problem> titrationBegun(BatchEvent.TitrationBegun event) {
        List<Problem> problems = work();
        vessels.takenOut(event.vessel(), event.sample())
                .forEach(problem -> problems.add(
                        new Problem(problem.field().equals("mass") ? "sample" : problem.field(), problem.sentence())));
        problems.addAll(written("corrector", event.corrector(), "Say which acid or base is poured."));
        if (event.dilution().isZero()) {
            problems.add(new Problem("dilution", "There is no corrector in this dilution."));
        }
        event.celsius().ifPresent(celsius -> problems.addAll(temperature("celsius", celsius)));
        return problems;
    }

    @Override
    public List<Problem> titrationRead(BatchEvent.TitrationRead event) {
        List<Problem> problems = new ArrayList<>();
        if (state.titrations().stream().noneMatch(one -> one.number() == event.titration())) {
            problems.add(new Problem("titration", "Entry " + event.titration() + " began no titration that counts."));
        }
        if (event.added().signum() < 0) {
            problems.add(new Problem("added", "What was added is not less than 0 g."));
        }
        problems.addAll(value(ReadingKind.PH, event.pH()).stream()
                .map(problem -> new Problem("pH", problem.sentence()))
                .toList());
        boolean twice = state.titrationReads().stream()
                .map(Logged::event)
                .anyMatch(read ->
                        read.titration() == event.titration() && read.added().equals(event.added()));
        if (twice) {
            problems.add(
                    new Problem(
                            "added",
                            "A reading at " + event.added()
                                    + " g added stands in the log already. Additions are entered as the sum so far; strike the worse reading of the two."));
        }
        return problems;
    }

    @Override
    public List<Problem> restBegun(BatchEvent.RestBegun event) {
        List<Problem> problems = work();
        if (state.rest().isPresent()) {
            problems.add(new Problem("due", "The batch rests already; end that rest first."));
        }
        return problems;
    }

    @Override
    public List<Problem> restEnded(BatchEvent.RestEnded event) {
        return state.rest().isPresent() ? List.of() : List.of(new Problem("rest", "The batch does not rest."));
    }

    @Override
    public List<Problem> filled(BatchEvent.Filled event) {
        List<Problem> problems = work();
        problems.addAll(vessels.filled(event));
        return problems;
    }

    @Override
    public List<Problem> handedOver(BatchEvent.HandedOver event) {
        List<Problem> problems = work();
        problems.addAll(vessels.takenOut(event.vessel(), event.mass()));
        problems.addAll(written("toBatch", event.toBatch(), "Name the batch that gets it."));
        return problems;
    }

    @Override
    public List<Problem> bulkReceived(BatchEvent.BulkReceived event) {
        List<Problem> problems = work();
        problems.addAll(vessels.inUse("vessel", event.vessel()));
        if (event.parts().isEmpty()
                || event.parts().stream().anyMatch(part -> part.mass().signum() <= 0)) {
            problems.add(new Problem("parts", "A bulk brings at least one material, each with more than 0 g."));
        }
        if (event.waterLost().compareTo(Grams.ZERO) < 0) {
            problems.add(new Problem("waterLost", "A loss is not less than 0 g."));
        }
        return problems;
    }

    @Override
    public List<Problem> pictured(BatchEvent.Pictured event) {
        return written("when", event.when(), "Say when of the making this was.");
    }

    @Override
    public List<Problem> noted(BatchEvent.Noted event) {
        return written("text", event.text(), "Write the note.");
    }

    @Override
    public List<Problem> struck(BatchEvent.Struck event) {
        List<Problem> problems = new ArrayList<>(written("reason", event.reason(), "Say why the entry is not true."));
        if (event.entry() < 1 || event.entry() > state.lastEntry()) {
            problems.add(new Problem("entry", "The log has no entry " + event.entry() + "."));
        } else if (state.struck().contains(event.entry())) {
            problems.add(new Problem("entry", "Entry " + event.entry() + " is struck already."));
        }
        return problems;
    }

    @Override
    public List<Problem> decided(BatchEvent.Decided event) {
        List<Problem> problems = new ArrayList<>(written("by", event.by(), "A named person decides."));
        if (event.decision() == Decision.RELEASED) {
            state.concerns()
                    .stop(Concern.Stop.HOLD)
                    .ifPresent(hold -> problems.add(new Problem(
                            "act", "The batch is on hold: " + hold.concern().reason() + ". Lift the hold first.")));
        } else {
            problems.addAll(written(
                    "reason",
                    event.reason(),
                    "Say why the batch is " + event.decision().name().toLowerCase(Locale.ROOT) + "."));
        }
        if (event.decision() == Decision.RECALLED && !state.isDecided(Decision.RELEASED)) {
            problems.add(new Problem("act", "Only a released batch is recalled."));
        }
        return problems;
    }

    @Override
    public List<Problem> concerned(BatchEvent.Concerned event) {
        return event.concern()
                .match(new ConcernRules(state.concerns(), state.filled(), state.isDecided(Decision.RELEASED)));
    }
}
