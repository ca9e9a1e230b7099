package stillroom.desk.batches.bench;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import stillroom.desk.batches.ActionWords;
import stillroom.desk.batches.BatchHead;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.LastTime;
import stillroom.desk.batches.LogLine;
import stillroom.desk.batches.Who;
import stillroom.desk.batches.bench.BenchPage.ActForm;
import stillroom.desk.batches.bench.BenchPage.Hidden;
import stillroom.desk.batches.bench.BenchPage.Way;
import stillroom.desk.shell.Decimals;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.Problem;
import stillroom.formulary.batch.NextAction;
import stillroom.formulary.batch.NextActions;
import stillroom.formulary.batch.Vessel;

/** Puts the bench screen together. */
final class BenchView {
    private static final int NEWEST = 6;
    private static final int LATER = 8;
    /** Problems with these belong to no field that the person sees. */
    private static final Set<String> GENERAL = Set.of(
            "act",
            "batch",
            "line",
            "lineId",
            "material",
            "materialKey",
            "timer",
            "rest",
            "entry",
            "vessel",
            "purpose",
            "plan",
            "parts",
            "phase",
            "into",
            "kind",
            "seen");

    private final BatchWork work;
    private final Input input;
    private final NextActions actions;
    private final Wish wish;
    private final String meanwhile;

    BenchView(BatchWork work, Input input, String meanwhile) {
        this.work = work;
        this.input = input;
        this.actions = work.actions();
        this.meanwhile = meanwhile;
        this.wish = settled(Wish.of(input));
    }

    /** Where nothing in particular is asked for: the vessel where something is to be done, and that. */
    private Wish settled(Wish asked) {
        Wish wanted = isOver(asked) ? Wish.nothing(asked.vessel()) : asked;
        Wish placed = wanted.in(vessel(asked.vessel()));
        if (placed.doing().isPresent()) {
            return placed;
        }
        Optional<NextAction> next = actions.next(placed.vessel());
        boolean nothingHere = next.isEmpty() || next.get() instanceof NextAction.WaitFor;
        if (nothingHere && !actions.batch().isEmpty()) {
            return Wish.of(actions.batch().get(0), placed.vessel());
        }
        return next.map(action -> Wish.of(action, placed.vessel())).orElse(placed);
    }

    /** An entry that is struck is neither struck nor read again; a pH that was corrected is not outside any more. */
    private boolean isOver(Wish asked) {
        Optional<Doing> doing = asked.doing();
        boolean onAnEntry =
                doing.filter(Set.of(Doing.STRIKE, Doing.AGAIN)::contains).isPresent();
        boolean struck = onAnEntry
                && work.state().struck().stream()
                        .anyMatch(entry -> Integer.toString(entry).equals(asked.get("entry")));
        boolean corrected = doing.filter(Doing.OUTSIDE::equals).isPresent()
                && actions.next(vessel(asked.vessel()))
                        .filter(NextAction.Correct.class::isInstance)
                        .isEmpty();
        return struck || corrected;
    }

    private String vessel(String asked) {
        List<Vessel> open = work.state().openVessels();
        if (open.stream().anyMatch(vessel -> vessel.name().equals(asked))) {
            return asked;
        }
        return open.stream()
                .filter(vessel -> actions.next(vessel.name())
                        .filter(next -> !(next instanceof NextAction.WaitFor))
                        .isPresent())
                .findFirst()
                .or(() -> open.stream().findFirst())
                .map(Vessel::name)
                .orElse("");
    }

    BenchPage page(Frame frame) {
        Typed typed = input.has("requestId") ? input.typed() : Typed.NOTHING;
        VesselStrip strip = new VesselStrip(work, actions);
        List<LogLine> newest = LogLine.of(work).stream().limit(NEWEST).toList();
        return new BenchPage(
                frame,
                BatchHead.of(work),
                strip.cards(wish.vessel()),
                strip.looseTimers(),
                wish.vessel(),
                panel(),
                form(typed),
                typed,
                typed.problems().stream()
                        .filter(problem -> GENERAL.contains(problem.field()))
                        .map(Problem::sentence)
                        .toList(),
                later(),
                ways(),
                newest,
                lastTime());
    }

    private List<String> lastTime() {
        Doing doing = wish.doing().orElse(Doing.DONE);
        boolean asks = doing == Doing.WEIGH || doing == Doing.STEP || doing == Doing.GROSS;
        if (!asks || work.batch().version().isEmpty()) {
            return List.of();
        }
        LastTime last = LastTime.of(
                work.desk(), work.product().id(), Optional.of(work.batch().id()));
        return switch (doing) {
            case WEIGH -> last.line(wish.get("line"));
            case STEP -> last.step(wish.get("step"));
            default -> last.evaporated();
        };
    }

    /** A dose that a titration asks for comes along in the address. */
    private Panel panel() {
        Panel panel = new Panels(work, actions, wish, meanwhile).panel();
        String dose = dose();
        if (!(panel instanceof Panel.Weigh weigh)) {
            return panel;
        }
        Panel.Weigh dosed = dose.isEmpty() ? weigh : weigh.dosed(dose, input.text("lot"));
        return input.text("scan").isEmpty()
                ? dosed
                : dosed.scanned(Scan.of(work, input.text("scan"), weigh.materialKey()));
    }

    private String dose() {
        return Decimals.read(input.text("dose"))
                .filter(grams -> grams.signum() > 0)
                .map(BigDecimal::toPlainString)
                .orElse("");
    }

    /** A form that could not be taken keeps its name, so that it is still one act when it is sent again. */
    private ActForm form(Typed typed) {
        String again = typed.value("requestId");
        String requestId = again.isEmpty() ? UUID.randomUUID().toString() : again;
        List<Hidden> about = new ArrayList<>();
        about.add(new Hidden("do", wish.doing().orElse(Doing.DONE).key()));
        about.add(new Hidden("vessel", wish.vessel()));
        if (!dose().isEmpty()) {
            about.add(new Hidden("dose", dose()));
        }
        Who who = new Who(
                typed.value("by", work.who().pours()),
                typed.value("checkedBy", work.who().checks()));
        return new ActForm(work.path() + "/log", requestId, work.state().lastEntry(), who, about);
    }

    private List<Way> later() {
        List<Way> later = new ArrayList<>();
        List<NextAction> here = actions.vessels().getOrDefault(wish.vessel(), List.of());
        ActionWords words = new ActionWords(work);
        for (NextAction action : here) {
            Wish other = Wish.of(action, wish.vessel());
            boolean now = other.equals(wish);
            later.add(new Way(words.of(action), work.path() + "/bench" + other.query(), now));
        }
        actions.batch().stream()
                .filter(action -> !Wish.of(action, wish.vessel()).isDone())
                .forEach(action -> later.add(new Way(
                        words.of(action),
                        work.path() + "/bench" + Wish.of(action, wish.vessel()).query(),
                        Wish.of(action, wish.vessel()).equals(wish))));
        return later.stream().limit(LATER).toList();
    }

    private List<Way> ways() {
        List<Way> ways = new ArrayList<>();
        for (Doing doing : open()) {
            if (doing == Doing.COMBINE && work.state().openVessels().size() < 2) {
                continue;
            }
            ways.add(way(doing));
        }
        if (work.state().decision().isEmpty() && !wish.vessel().isEmpty()) {
            ways.add(new Way("Divide or join", work.path() + "/bulk", false));
        }
        return ways;
    }

    /** What may be done besides the next action. */
    private List<Doing> open() {
        if (work.state().decision().isPresent()) {
            return List.of(Doing.READ, Doing.NOTE);
        }
        return wish.vessel().isEmpty()
                ? List.of(Doing.READY, Doing.NOTE)
                : List.of(
                        Doing.READ,
                        Doing.CORRECT,
                        Doing.STEP,
                        Doing.TIMER,
                        Doing.SAMPLE,
                        Doing.GROSS,
                        Doing.BACK,
                        Doing.COMBINE,
                        Doing.REST,
                        Doing.NOTE,
                        Doing.READY);
    }

    private Way way(Doing doing) {
        boolean now = later().stream().noneMatch(Way::current)
                && wish.doing().filter(doing::equals).isPresent()
                && !(doing == Doing.STEP && !wish.get("step").isEmpty());
        String words = doing == Doing.CORRECT && work.plan().isEmpty() ? "Add a material" : doing.words();
        String purpose = work.plan().isEmpty() ? "LINE" : "CORRECTION_ACID";
        String query = doing == Doing.CORRECT
                ? Wish.query(wish.vessel(), doing, "purpose", purpose)
                : Wish.query(wish.vessel(), doing);
        return new Way(words, work.path() + "/bench" + query, now);
    }
}
