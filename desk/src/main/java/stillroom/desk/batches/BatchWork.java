package stillroom.desk.batches;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.LotsUsed;
import stillroom.desk.shell.ToolShed;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.batch.BenchFacts;
import stillroom.formulary.batch.Hold;
import stillroom.formulary.batch.Holds;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.batch.MadeBook;
import stillroom.formulary.batch.NextActions;
import stillroom.formulary.batch.PremixHolds;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Product;
import stillroom.formulary.hygiene.HoldLimits;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Interval;
import stillroom.ledger.Ledger;
import stillroom.ledger.lot.StockedLot;

/**
 * A batch with all that its pages look at: what it is made from, its log, and what that adds up to.
 *
 * @param version none when weighed free hand
 * @param formula of the version; empty when weighed free hand
 * @param book the cards as the version means them
 */
public record BatchWork(
        Desk desk,
        Batch batch,
        Product product,
        Optional<FormulaVersion> version,
        Formula formula,
        MaterialBook book,
        List<LogEntry> log,
        BatchState state) {
    public BatchWork {
        log = List.copyOf(log);
    }

    /** The batch in the path of a request. */
    public static BatchWork of(Desk desk, Context request) {
        return of(desk, Desk.id(request, "id"));
    }

    public static BatchWork of(Desk desk, long id) {
        Ledger ledger = desk.ledger();
        Batch batch = ledger.batches()
                .batch(id)
                .orElseThrow(() -> new NotFoundResponse("There is no batch with this number."));
        Product product = ledger.products()
                .product(batch.productId())
                .orElseThrow(() -> new NotFoundResponse("The product of this batch is not on file."));
        Optional<FormulaVersion> version =
                batch.version().flatMap(number -> ledger.products().version(batch.productId(), number));
        MaterialBook book = version.map(v -> ledger.materials().book(v.cards()))
                .orElseGet(() -> ledger.materials().book());
        List<LogEntry> log = ledger.batches().log(id);
        return new BatchWork(
                desk,
                batch,
                product,
                version,
                version.map(FormulaVersion::formula).orElse(Formula.EMPTY),
                book,
                log,
                BatchState.of(log));
    }

    public NextActions actions() {
        Optional<Interval> phBand = product.brief().phBand();
        return plan().map(plan -> NextActions.of(formula, plan, state, phBand))
                .orElseGet(() -> NextActions.freeHand(state, phBand));
    }

    public Optional<Plan> plan() {
        return state.plan();
    }

    public Optional<PlannedLine> line(String id) {
        return plan().flatMap(plan -> plan.line(id));
    }

    /** The cards as the lots that were really used are, by their certificates. */
    public MadeBook madeBook() {
        return LotsUsed.book(desk.ledger(), state, formula, book);
    }

    public Cards cards() {
        return new Cards(book);
    }

    /** All materials of the formula and of what was poured. */
    public List<String> materialKeys() {
        return Stream.concat(
                        formula.lines().stream().map(Line::materialKey),
                        state.pours().stream().map(pour -> pour.event().materialKey()))
                .distinct()
                .toList();
    }

    /** How long each phase, the bulk, its premixes and what was not yet preserved stood, by the workshop's limits. */
    public List<Hold> holds() {
        HoldLimits limits = new ToolShed(desk).limits();
        return Stream.concat(
                        Holds.of(log, state, limits, book, desk.now()).stream(),
                        PremixHolds.of(state, new PremixShelf(desk).since(lots()), limits).stream())
                .toList();
    }

    private List<String> lots() {
        return state.pours().stream()
                .flatMap(pour -> pour.event().lot().stream())
                .distinct()
                .toList();
    }

    /** What is known around the batch where an event is to be entered. */
    public BenchFacts facts(BatchEvent event) {
        List<Lot> lots = named(event)
                .flatMap(code -> desk.ledger().lots().lot(code).stream())
                .map(StockedLot::lot)
                .toList();
        return new BenchFacts(
                desk.ledger().equipment().balances(),
                lots,
                book,
                desk.today(),
                new ToolShed(desk).standings(),
                lots.stream()
                        .flatMap(lot -> new PremixShelf(desk).standing(lot).stream())
                        .toList());
    }

    private static Stream<String> named(BatchEvent event) {
        if (event instanceof BatchEvent.LotsNamed lots) {
            return lots.parts().stream().map(BatchEvent.LotPart::lot);
        }
        return event instanceof BatchEvent.Poured poured ? poured.lot().stream() : Stream.empty();
    }

    public Who who() {
        return Who.of(log);
    }

    public Optional<LogEntry> entry(int number) {
        return log.stream().filter(entry -> entry.number() == number).findFirst();
    }

    public String path() {
        return "/batches/" + batch.id();
    }
}
