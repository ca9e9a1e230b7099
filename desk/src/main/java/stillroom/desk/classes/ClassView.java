package stillroom.desk.classes;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.Cards;
import stillroom.desk.batches.Who;
import stillroom.desk.classes.ClassPage.Beforehand;
import stillroom.desk.classes.ClassPage.Cell;
import stillroom.desk.classes.ClassPage.Column;
import stillroom.desk.classes.ClassPage.Kit;
import stillroom.desk.classes.ClassPage.Row;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Typed;
import stillroom.formulary.formula.Line;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.plan.PremixPlan;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.lot.StockedLot;
import stillroom.science.weighing.Dilution;

/** Puts a class on its page. */
record ClassView(Lesson lesson, Lesson.Set set) {
    static ClassPage page(Lesson lesson, Context request, Typed typed) {
        return new ClassView(lesson, lesson.set()).page(request, typed);
    }

    private ClassPage page(Context request, Typed typed) {
        String about = lesson.of().title() + ", " + Format.day(lesson.of().day());
        return new ClassPage(
                lesson.desk().frame(request, about, Section.PRODUCTS),
                lesson.path(),
                "/products/" + lesson.product().id() + "/versions/"
                        + lesson.version().number(),
                about,
                lesson.of().sets() + " sets of " + Format.grams(lesson.of().each()) + " g, "
                        + lesson.product().name() + ", version "
                        + lesson.version().number() + "; balances that show "
                        + lesson.of().step() + " g; " + lesson.of().spare() + " % to spare",
                set.plan().map(this::kit).orElse(List.of()),
                beforehand(),
                set.plan().map(this::advice).orElse(List.of()),
                obstacle(),
                lesson.of().batches().isEmpty() ? String.join("; ", lesson.waitingNames()) : "",
                set.plan().map(this::columns).orElse(List.of()),
                lesson.of().batches().isEmpty() ? List.of() : rows(),
                UUID.randomUUID().toString(),
                Who.ofNewest(lesson.desk().ledger()).pours(),
                typed);
    }

    private Cards cards() {
        return new Cards(set.book());
    }

    private List<Kit> kit(Plan plan) {
        return plan.lines().stream()
                .map(PlannedLine::materialKey)
                .distinct()
                .map(key -> kit(plan, key))
                .toList();
    }

    private Kit kit(Plan plan, String key) {
        Grams each = Grams.sum(plan.lines().stream()
                .filter(line -> line.materialKey().equals(key))
                .map(PlannedLine::target)
                .toList());
        Grams all = lesson.of().forAll(each);
        List<StockedLot> lots = lesson.desk().ledger().lots().ofMaterial(key);
        Grams onHand = Grams.sum(lots.stream().map(StockedLot::onHand).toList());
        return new Kit(
                cards().name(key),
                Format.grams(each, lesson.of().step()),
                Format.reckonedGrams(all),
                lots.isEmpty() ? "not booked" : Format.grams(onHand) + " g",
                !lots.isEmpty() && onHand.compareTo(all) < 0);
    }

    private List<Beforehand> beforehand() {
        List<Beforehand> rows = new ArrayList<>();
        for (Line line : lesson.version().formula().lines()) {
            if (lesson.of().premixes().containsKey(line.id())) {
                rows.add(beforehand(line));
            }
        }
        return rows;
    }

    private Beforehand beforehand(Line line) {
        Optional<Lesson.Ready> ready = lesson.ready(line.id());
        Optional<PremixPlan> premix = lesson.premix(line.id());
        String says = premix.map(this::says)
                .orElse("One set holds too little of the carrier for a portion that these balances can weigh.");
        return new Beforehand(
                line.id(),
                cards().name(line.materialKey()),
                says,
                ready.map(one -> one.lot().code()).orElse(""),
                premix.isPresent());
    }

    private String says(PremixPlan premix) {
        Dilution.Step step = premix.dilution().steps().get(0);
        return new Grams(step.concentrate()) + " g in " + new Grams(step.carrier()) + " g "
                + cards().name(premix.carrier().materialKey()) + "; each set takes "
                + new Grams(premix.dilution().portion())
                + " g of it. See that it dissolves clear; if not, choose another carrier.";
    }

    private List<String> advice(Plan plan) {
        List<String> advice = new ArrayList<>();
        List<String> premixed = lesson.waiting().stream().map(Line::id).toList();
        for (PlannedLine line : plan.lines()) {
            if (premixed.contains(line.lineId())) {
                continue;
            }
            line.advice().stream()
                    .filter(one -> !one.says().contains("booked"))
                    .forEach(one -> advice.add(cards().name(line.materialKey()) + ": " + one.says()));
        }
        return advice;
    }

    private String obstacle() {
        if (set.plan().isEmpty()) {
            return "The formula does not add up, so there is nothing to weigh yet.";
        }
        return set.plan().get().refused()
                ? "A set of this size should not be weighed on these balances: see the lines below. A premix, larger sets or finer balances mend it."
                : "";
    }

    private List<Column> columns(Plan plan) {
        return plan.lines().stream()
                .map(line -> new Column(
                        line.lineId(),
                        cards().name(line.materialKey()),
                        Format.grams(line.target(), lesson.of().step())))
                .toList();
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (long batch : lesson.of().batches()) {
            BatchWork work = BatchWork.of(lesson.desk(), batch);
            List<Cell> cells = work.plan().map(plan -> cells(work, plan)).orElse(List.of());
            rows.add(new Row(
                    rows.size() + 1,
                    batch,
                    work.batch().code(),
                    work.state().stage().words(),
                    cells));
        }
        return rows;
    }

    private List<Cell> cells(BatchWork work, Plan plan) {
        return plan.lines().stream()
                .map(line -> {
                    Grams poured = work.state().poured(line.lineId());
                    return new Cell(
                            "g-" + work.batch().id() + "-" + line.lineId(),
                            poured.isZero() ? "" : Format.grams(poured),
                            work.batch().code() + ", " + cards().name(line.materialKey()));
                })
                .toList();
    }
}
