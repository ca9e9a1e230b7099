package stillroom.desk.batches.bench;

import io.javalin.http.NotFoundResponse;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.desk.batches.ActionWords;
import stillroom.desk.batches.BatchHead;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.LogWords;
import stillroom.desk.batches.Masses;
import stillroom.desk.batches.bench.BenchPage.Way;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.ToolShed;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.batch.NextAction;
import stillroom.formulary.batch.NextActions;
import stillroom.formulary.batch.Vessel;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Step;
import stillroom.formulary.plan.PlannedLine;

/** Puts together the one panel that the bench screen shows. */
final class Panels {
    private static final Set<Doing> AFTER_THE_DECISION = Set.of(Doing.READ, Doing.NOTE, Doing.STRIKE, Doing.AGAIN);

    private final BatchWork work;
    private final NextActions actions;
    private final Wish wish;
    private final String meanwhile;

    /** @param meanwhile what was written from elsewhere since the form was shown, empty for nothing */
    Panels(BatchWork work, NextActions actions, Wish wish, String meanwhile) {
        this.work = work;
        this.actions = actions;
        this.wish = wish;
        this.meanwhile = meanwhile;
    }

    Panel panel() {
        Doing doing = wish.doing().orElse(Doing.DONE);
        if (work.state().decision().isPresent() && !AFTER_THE_DECISION.contains(doing)) {
            return decided();
        }
        if (work.state().openVessels().isEmpty() && !AFTER_THE_DECISION.contains(doing)) {
            return ready();
        }
        return switch (doing) {
            case READY -> ready();
            case WEIGH -> new Weighing(work, wish.vessel()).line(line(), meanwhile);
            case SETTLE -> new Weighing(work, wish.vessel()).over(line());
            case OUTSIDE -> outside();
            case BACK -> new Weighing(work, wish.vessel()).back(wish.get("material"));
            case STEP -> step();
            case COMBINE -> combine();
            case READ -> new LookBack(work, wish).read();
            case CORRECT -> correct();
            case GROSS -> new LookBack(work, wish).gross();
            case SAMPLE -> sample();
            case INSTEAD -> new Weighing(work, wish.vessel()).instead(line());
            case ASTRAY -> new Astray(work, wish.vessel()).panel(wish.get("entry"));
            case LOTS -> new LookBack(work, wish).lots();
            case GIVEUP -> new Panel.GiveUp("Give the batch up", new Losing(work).says());
            case REST -> new Panel.Rest("Let it rest", tomorrow());
            case LOOK -> new LookBack(work, wish).look();
            case TIMER -> new Panel.Timer("Start a timer for " + wish.vessel());
            case NOTE -> new Panel.Note("Write a note");
            case STRIKE -> new LookBack(work, wish).strike();
            case AGAIN -> new LookBack(work, wish).again();
            case DONE -> done();
        };
    }

    private PlannedLine line() {
        return work.line(wish.get("line")).orElseThrow(() -> new NotFoundResponse("The plan has no such line."));
    }

    private Panel ready() {
        Optional<String> asked =
                Optional.of(wish.get("step")).filter(id -> !id.isEmpty()).or(this::unservedPhase);
        List<Panel.PhaseTick> phases = work.formula().phases().stream()
                .map(phase -> new Panel.PhaseTick(
                        phase.id(),
                        phase.name(),
                        asked.filter(phase.id()::equals).isPresent()))
                .toList();
        String title = asked.flatMap(work.formula()::phase)
                .map(phase -> "Make a vessel ready for " + phase.name())
                .orElse("Make a vessel ready");
        String phaseId = asked.orElse("");
        return new Panel.Ready(
                title,
                "Vessel " + (work.state().vessels().size() + 1),
                phases,
                listed(),
                tools(),
                phaseId,
                phaseId.isEmpty()
                        ? List.of()
                        : work.state().openVessels().stream().map(Vessel::name).toList(),
                Room.needs(work, phaseId));
    }

    /** The vessels of the workshop's list that this batch does not use yet, each with how clean it is. */
    private List<Panel.Listed> listed() {
        ToolShed shed = new ToolShed(work.desk());
        return shed.standings().stream()
                .filter(standing -> standing.tool().vessel()
                        && work.state().vessel(standing.tool().name()).isEmpty())
                .map(standing -> new Panel.Listed(standing.tool().name(), shed.says(standing)))
                .toList();
    }

    private List<Panel.Listed> tools() {
        ToolShed shed = new ToolShed(work.desk());
        return shed.standings().stream()
                .filter(standing -> !standing.tool().vessel())
                .map(standing -> new Panel.Listed(standing.tool().name(), shed.says(standing)))
                .toList();
    }

    /** What is too much of a phase stands in the form already. */
    private Panel sample() {
        return work.state().surplusOpen().stream()
                .filter(one -> one.phaseId().equals(wish.get("phase")))
                .findFirst()
                .map(one -> new Panel.Sample(
                        "Throw away what is too much of the phase", Masses.shown(one.mass()), one.what()))
                .orElseGet(() -> new Panel.Sample("Take a sample out of " + wish.vessel(), "", ""));
    }

    private Optional<String> unservedPhase() {
        return actions.batch().stream()
                .filter(NextAction.ReadyVessel.class::isInstance)
                .map(action -> ((NextAction.ReadyVessel) action).phaseId())
                .findFirst();
    }

    private Panel step() {
        Optional<Step> step = steps(work.formula()).stream()
                .filter(one -> one.id().equals(wish.get("step")))
                .findFirst();
        if (step.isEmpty()) {
            return new Panel.Step("Work in " + wish.vessel(), "", "", "", "", "", "", List.of());
        }
        Step known = step.get();
        List<String> cautions = new ArrayList<>();
        if (!known.caution().isBlank()) {
            cautions.add(known.caution());
        }
        Cautions.ofHeat(known.celsius()).ifPresent(cautions::add);
        return new Panel.Step(
                known.doing(),
                known.id(),
                known.doing(),
                known.celsius().map(LogWords::plain).orElse(""),
                known.speed(),
                known.minutes().map(LogWords::plain).orElse(""),
                known.seeIt(),
                cautions);
    }

    private static List<Step> steps(Formula formula) {
        return formula.phases().stream().map(Phase::steps).flatMap(List::stream).toList();
    }

    private Panel combine() {
        String from = wish.get("from").isEmpty() ? wish.vessel() : wish.get("from");
        List<Choice> vessels = work.state().openVessels().stream()
                .map(Vessel::name)
                .map(name -> new Choice(name, name))
                .toList();
        Optional<NextAction.Combine> advised = actions.vessels().values().stream()
                .flatMap(List::stream)
                .filter(NextAction.Combine.class::isInstance)
                .map(NextAction.Combine.class::cast)
                .filter(action -> action.from().equals(from))
                .findFirst();
        String into = wish.get("into").isEmpty()
                ? advised.map(NextAction.Combine::into).orElse(otherThan(from))
                : wish.get("into");
        return new Panel.Combine(
                "Put one vessel into another",
                vessels,
                from,
                into,
                advised.map(NextAction.Combine::advised).orElse(false),
                advised.map(NextAction.Combine::why).orElse("The procedure does not ask for this now."));
    }

    private String otherThan(String from) {
        return work.state().openVessels().stream()
                .map(Vessel::name)
                .filter(name -> !name.equals(from))
                .findFirst()
                .orElse("");
    }

    private Panel correct() {
        Purpose purpose = purpose();
        String material = wish.get("material");
        if (!material.isEmpty() && work.book().material(material).isPresent()) {
            return new Weighing(work, wish.vessel()).free(material, purpose, meanwhile);
        }
        Picking picking = new Picking(work, wish.vessel());
        return purpose == Purpose.LINE ? picking.freeHand() : picking.forCorrection(purpose);
    }

    private Purpose purpose() {
        for (Purpose purpose : Purpose.values()) {
            if (purpose.name().equals(wish.get("purpose"))) {
                return purpose;
            }
        }
        return work.plan().isPresent() ? Purpose.CORRECTION_ACID : Purpose.LINE;
    }

    private String tomorrow() {
        return LocalDateTime.ofInstant(work.desk().now(), work.desk().zone())
                .plusDays(1)
                .truncatedTo(ChronoUnit.HOURS)
                .toString();
    }

    private Panel done() {
        boolean freeHand = work.plan().isEmpty();
        if (freeHand && work.state().fills().isEmpty() && work.state().rest().isEmpty()) {
            return new Picking(work, wish.vessel()).freeHand();
        }
        boolean ofPremix = BatchHead.of(work).premix();
        if (ofPremix && actions.batch().stream().anyMatch(NextAction.Fill.class::isInstance)) {
            return new Panel.Done(
                    "The premix is made",
                    "Both parts are in and it is even. Put it on the shelf as a lot of its own.",
                    List.of(new Way("Put it on the shelf", work.path() + "/premix", false)));
        }
        return new Panel.Done("What next", says(), waysOn());
    }

    private Panel decided() {
        String decided = work.state().stage().words();
        return new Panel.Done(
                "The batch is " + decided,
                "Only notes and readings are written down now. To work on it again, strike the decision first.",
                List.of(new Way("To the decision", work.path() + "/fill", false)));
    }

    /** Where it was corrected meanwhile, what comes next instead. */
    private Panel outside() {
        return actions.next(wish.vessel())
                .filter(NextAction.Correct.class::isInstance)
                .map(NextAction.Correct.class::cast)
                .<Panel>map(correct -> new OutsidePh(work, wish.vessel()).panel(correct))
                .orElseGet(this::done);
    }

    private String says() {
        Optional<NextAction> next = actions.next(wish.vessel());
        if (next.isPresent()) {
            return new ActionWords(work).of(next.get())
                    + (next.get() instanceof NextAction.WaitFor ? ": the work there is not finished." : ".");
        }
        boolean restFirst = actions.batch().stream().anyMatch(NextAction.LetRest.class::isInstance);
        return restFirst
                ? "All is in, and the pH lies in its band. It may move overnight: let it rest and look again before you fill."
                : "Nothing of the procedure is open in " + wish.vessel() + ". Read, correct, let it rest, or fill.";
    }

    private List<Way> waysOn() {
        List<Way> ways = new ArrayList<>();
        actions.next(wish.vessel())
                .map(action -> action instanceof NextAction.WaitFor wait
                        ? new Way(
                                "To " + wait.vessel(),
                                work.path() + "/bench?vessel=" + Wish.coded(wait.vessel()),
                                false)
                        : way(action))
                .ifPresent(ways::add);
        actions.batch().stream().map(this::way).forEach(ways::add);
        return ways;
    }

    private Way way(NextAction action) {
        String words = new ActionWords(work).of(action);
        if (action instanceof NextAction.Fill || action instanceof NextAction.Decide) {
            return new Way(words, work.path() + "/fill", false);
        }
        String query = action instanceof NextAction.LetRest
                ? Wish.query(wish.vessel(), Doing.REST)
                : Wish.of(action, wish.vessel()).query();
        return new Way(words, work.path() + "/bench" + query, false);
    }
}
