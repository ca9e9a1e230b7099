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
import stillroom.formulary.batch.BenchFacts;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.plan.PlannedLine.LotShare;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.Ledger;
import stillroom.ledger.lot.StockedLot;

/** Begins the batches of a class, and takes what was weighed from its grid. */
final class ClassWork {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyMMdd");
    private static final String BEAKER = "beaker";

    private final Lesson lesson;
    private final Ledger ledger;
    private final MaterialBook cards;

    ClassWork(Lesson lesson) {
        this.lesson = lesson;
        this.ledger = lesson.desk().ledger();
        this.cards = lesson.set().book();
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
        BatchEvent.Poured poured = new BatchEvent.Poured(
                BEAKER,
                Optional.of(line.lineId()),
                line.materialKey(),
                line.lots().stream().map(LotShare::lotCode).findFirst(),
                grams.get(),
                BatchEvent.Purpose.LINE,
                "",
                "",
                "typed from the grid of the class");
        List<Problem> problems =
                BatchRules.problems(BatchWork.of(lesson.desk(), batch).state(), poured, facts(poured));
        if (!problems.isEmpty()) {
            input.refuse(field, problems.get(0).sentence());
            return false;
        }
        ledger.batches().append(batch, request, lesson.desk().now(), who, poured);
        return true;
    }

    private BenchFacts facts(BatchEvent.Poured poured) {
        List<Lot> lots = poured.lot().stream()
                .flatMap(code -> ledger.lots().lot(code).stream())
                .map(StockedLot::lot)
                .toList();
        return new BenchFacts(
                ledger.equipment().balances(), lots, cards, lesson.desk().today());
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
