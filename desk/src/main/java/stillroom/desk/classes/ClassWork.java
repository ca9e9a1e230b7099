package stillroom.desk.classes;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Input;
import stillroom.formulary.Problem;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchRules;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.plan.PlannedLine.LotShare;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.Ledger;

/** Begins the batches of a class, and takes what was weighed from its grid. */
final class ClassWork {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyMMdd");
    private static final String BEAKER = "beaker";
    private static final String FROM_GRID = "typed from the grid of the class";

    /** The field that says why a lot is used that the bench would ask about. */
    static final String REASON = "why";

    private final Lesson lesson;
    private final Ledger ledger;

    ClassWork(Lesson lesson) {
        this.lesson = lesson;
        this.ledger = lesson.desk().ledger();
    }

    /** A planned batch for each set, all or none. The version is kept by that. */
    void begin(Plan plan, String who) {
        ledger.together(() -> {
            if (!lesson.version().kept()) {
                ledger.products()
                        .keep(
                                lesson.product().id(),
                                lesson.version().number(),
                                lesson.version().edit());
            }
            List<Long> batches = new ArrayList<>();
            for (int set = 1; set <= lesson.of().sets(); set++) {
                batches.add(open(set, plan, who));
            }
            Lesson.drawer(lesson.desk()).write(lesson.key(), lesson.of().begun(batches));
            return true;
        });
    }

    private long open(int set, Plan plan, String who) {
        Desk desk = lesson.desk();
        String code = DAY.format(lesson.of().day()) + "-K" + lesson.key() + "-" + set;
        Batch batch = ledger.batches()
                .open(lesson.product().id(), Optional.of(lesson.version().number()), code, desk.today())
                .orElseGet(() -> ledger.batches()
                        .open(
                                lesson.product().id(),
                                Optional.of(lesson.version().number()),
                                ledger.batches().proposeCode(desk.today()),
                                desk.today())
                        .orElseThrow());
        ledger.batches().append(batch.id(), "begin-" + batch.id(), desk.now(), who, new BatchEvent.Planned(plan));
        return batch.id();
    }

    /**
     * Takes the figures of the grid that can be taken; beside the others stands why not. What was sent before with the same
     * token is not taken again.
     *
     * @return how many weighings were written
     */
    int take(Input input) {
        String who = input.required("by", "The name of who weighed, or who types");
        String token = input.text("token");
        if (!token.matches("[A-Za-z0-9-]{8,64}")) {
            input.refuse("by", "The form was not complete; here it is again.");
        }
        if (input.hasProblem("by")) {
            return 0;
        }
        int taken = 0;
        for (long id : lesson.of().batches()) {
            BatchWork work = BatchWork.of(lesson.desk(), id);
            for (PlannedLine line : work.plan().map(Plan::lines).orElse(List.of())) {
                taken += take(input, id, line, token, who) ? 1 : 0;
            }
        }
        return taken;
    }

    private boolean take(Input input, long batch, PlannedLine line, String token, String who) {
        String field = "g-" + batch + "-" + line.lineId();
        Optional<Grams> grams = input.grams(field, "The weight");
        if (grams.isEmpty() || grams.get().isZero()) {
            return false;
        }
        String request = token + "-" + batch + "-" + line.lineId();
        if (ledger.batches().made(batch, request).isPresent()) {
            return false;
        }
        ready(batch, who);
        Optional<BatchEvent.Poured> poured = judged(input, field, batch, line, grams.get());
        poured.ifPresent(
                event -> ledger.batches().append(batch, request, lesson.desk().now(), who, event));
        return poured.isPresent();
    }

    /** The weighing as it may be written; a lot that the bench would ask about is asked about here, once for the grid. */
    private Optional<BatchEvent.Poured> judged(Input input, String field, long batch, PlannedLine line, Grams grams) {
        List<Problem> open = problems(batch, poured(line, grams, ""));
        if (open.isEmpty()) {
            return Optional.of(poured(line, grams, FROM_GRID));
        }
        String reason = input.text(REASON);
        List<Problem> left = reason.isEmpty() ? open : problems(batch, poured(line, grams, reason));
        if (left.isEmpty()) {
            return Optional.of(poured(line, grams, reason + "; " + FROM_GRID));
        }
        input.refuse(field, left.get(0).sentence());
        if (problems(batch, poured(line, grams, "reason")).isEmpty()) {
            input.refuse(REASON, "Say why for the fields marked above, or weigh from another lot at the bench.");
        }
        return Optional.empty();
    }

    private List<Problem> problems(long batch, BatchEvent.Poured poured) {
        BatchWork work = BatchWork.of(lesson.desk(), batch);
        return BatchRules.problems(work.state(), poured, work.facts(poured));
    }

    private static BatchEvent.Poured poured(PlannedLine line, Grams grams, String note) {
        return new BatchEvent.Poured(
                BEAKER,
                Optional.of(line.lineId()),
                line.materialKey(),
                line.lots().stream().map(LotShare::lotCode).findFirst(),
                grams,
                BatchEvent.Purpose.LINE,
                "",
                "",
                note);
    }

    /** The first weighing of a set finds its beaker ready. */
    private void ready(long batch, String who) {
        boolean there =
                BatchWork.of(lesson.desk(), batch).state().vessel(BEAKER).isPresent();
        if (!there) {
            ledger.batches().append(batch, "class-begun-" + batch, lesson.desk().now(), who, new BatchEvent.Begun(""));
            ledger.batches()
                    .append(
                            batch,
                            "class-beaker-" + batch,
                            lesson.desk().now(),
                            who,
                            new BatchEvent.VesselReady(
                                    BEAKER,
                                    Optional.empty(),
                                    Optional.empty(),
                                    "a clean beaker of the class",
                                    List.of()));
        }
    }
}
