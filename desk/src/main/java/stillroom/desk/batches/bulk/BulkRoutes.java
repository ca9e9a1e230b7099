package stillroom.desk.batches.bulk;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import stillroom.desk.batches.BatchHead;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.Masses;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.batch.Vessel;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.batch.BatchRow;

/** Dividing a bulk into child batches, and blending two. */
public final class BulkRoutes {
    private static final String PATH = "/batches/{id}/bulk";
    private static final String TEMPLATE = "batches/bulk/bulk.jte";

    private BulkRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get(PATH, request -> show(desk, request));
        routes.post(PATH, request -> handOver(desk, request));
    }

    private static void show(Desk desk, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        Frame frame = desk.frame(request, work.batch().code() + ": divide or join", Section.BATCHES);
        desk.pages().show(request, TEMPLATE, page(desk, work, frame, joined(desk, work, request.queryParam("with"))));
    }

    /** Everything that is here, into the batch with which this one is to be blended. */
    private static Typed joined(Desk desk, BatchWork work, @Nullable String code) {
        if (code == null) {
            return Typed.NOTHING;
        }
        Optional<String> into = batches(desk, work).stream()
                .map(Choice::value)
                .filter(value -> value.startsWith(code + "/"))
                .findFirst();
        Optional<Vessel> from = full(work.state()).stream().findFirst();
        return into.isEmpty() || from.isEmpty()
                ? Typed.NOTHING
                : new Typed(
                        Map.of(
                                "to", into.get(),
                                "vessel", from.get().name(),
                                "mass", all(from.get())),
                        List.of());
    }

    /** To a milligram, never more than is there [g]. */
    private static String all(Vessel vessel) {
        return vessel.mixture()
                .net()
                .value()
                .setScale(3, RoundingMode.FLOOR)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static void handOver(Desk desk, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        Input input = Input.of(request);
        Optional<Long> to = handed(desk, work, input);
        if (to.isPresent()) {
            request.redirect("/batches/" + to.get() + "/bench?did=logged", HttpStatus.SEE_OTHER);
            return;
        }
        Frame frame = desk.frame(work.batch().code() + ": divide or join", Section.BATCHES);
        desk.pages().showAgain(request, TEMPLATE, page(desk, work, frame, input.typed()));
    }

    private static Optional<Long> handed(Desk desk, BatchWork work, Input input) {
        try {
            return new HandingOver(desk, work, input).done();
        } catch (HandingOver.Refused refused) {
            return Optional.empty();
        }
    }

    private static BulkPage page(Desk desk, BatchWork work, Frame frame, Typed typed) {
        String again = typed.value("requestId");
        String general = typed.problems().stream()
                .filter(problem ->
                        problem.field().equals("batch") || problem.field().equals("act"))
                .map(problem -> problem.sentence())
                .findFirst()
                .orElse("");
        return new BulkPage(
                frame,
                BatchHead.of(work),
                full(work.state()).stream()
                        .map(vessel -> new Choice(
                                vessel.name(),
                                vessel.name() + ", "
                                        + Masses.shown(vessel.mixture().net()) + " g"))
                        .toList(),
                batches(desk, work),
                desk.ledger().batches().proposeCode(desk.today()),
                work.who(),
                again.isEmpty() ? UUID.randomUUID().toString() : again,
                typed,
                general);
    }

    private static List<Vessel> full(BatchState state) {
        return state.openVessels().stream()
                .filter(vessel -> vessel.mixture().net().compareTo(Grams.ZERO) > 0)
                .toList();
    }

    /** Each open vessel of each unfinished batch. */
    private static List<Choice> batches(Desk desk, BatchWork work) {
        List<Choice> choices = new ArrayList<>(
                List.of(new Choice("", "A new batch of " + work.product().name())));
        for (BatchRow row : desk.ledger().batches().unfinished()) {
            if (row.batch().id() == work.batch().id()) {
                continue;
            }
            BatchState state =
                    BatchState.of(desk.ledger().batches().log(row.batch().id()));
            state.openVessels()
                    .forEach(vessel -> choices.add(new Choice(
                            row.batch().code() + "/" + vessel.name(),
                            row.batch().code() + ", " + row.productName() + ", into " + vessel.name())));
        }
        return choices;
    }
}
