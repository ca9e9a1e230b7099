package stillroom.desk.batches.premix;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.math.MathContext;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import stillroom.desk.batches.BatchHead;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.LogPost;
import stillroom.desk.batches.Masses;
import stillroom.desk.batches.PremixShelf;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.batch.Vessel;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.formulary.plan.PremixRecipe;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.PercentRange;
import stillroom.ledger.trace.TraceBook;

/** Puts a premix that was weighed on the shelf as a lot of its own. */
public final class PremixRoutes {
    private static final String PATH = "/batches/{id}/premix";
    private static final String TEMPLATE = "batches/premix/premix.jte";
    private static final Pattern CODE = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,39}");
    private static final MathContext SHOWN = new MathContext(4);

    private PremixRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get(PATH, request -> show(desk, request));
        routes.post(PATH, request -> shelve(desk, request));
    }

    private static PremixMade made(Desk desk, BatchWork work) {
        PremixRecipe recipe = new PremixDrawers(desk)
                .ofProduct(work.product().id())
                .orElseThrow(() -> new NotFoundResponse("This batch is no premix."));
        return new PremixMade(work, recipe);
    }

    private static void show(Desk desk, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        PremixMade made = made(desk, work);
        desk.pages()
                .show(
                        request,
                        TEMPLATE,
                        page(desk, made, desk.frame(request, title(work), Section.BATCHES), Typed.NOTHING, ""));
    }

    private static String title(BatchWork work) {
        return work.batch().code() + ": premix";
    }

    private static void shelve(Desk desk, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        PremixMade made = made(desk, work);
        Input input = Input.of(request);
        String code = input.required("code", "The lot code");
        if (!code.isEmpty() && !CODE.matcher(code).matches()) {
            input.refuse("code", "A lot code has up to 40 letters, digits, hyphens, dots or underscores, no blanks.");
        }
        Optional<LocalDate> keeps = input.day("keeps", "The last day");
        if (keeps.isEmpty() && !input.hasProblem("keeps")) {
            input.refuse("keeps", "Say until when it keeps; today, if it is used up at once.");
        }
        String general = open(made);
        if (input.isSound() && general.isEmpty() && booked(desk, made, input, code, keeps.orElseThrow())) {
            request.redirect(after(desk, work, code), HttpStatus.SEE_OTHER);
            return;
        }
        PremixPage page = page(desk, made, desk.frame(title(work), Section.BATCHES), input.typed(), general);
        desk.pages().showAgain(request, TEMPLATE, page);
    }

    /** Why it cannot be put on the shelf yet; empty where it can. */
    private static String open(PremixMade made) {
        if (lotOf(made.work()).isPresent()) {
            return "It stands on the shelf already.";
        }
        List<Vessel> full = made.work().state().openVessels().stream()
                .filter(vessel -> vessel.mixture().net().signum() > 0)
                .toList();
        if (made.share().isEmpty() || full.size() != 1) {
            return "Weigh both parts into one vessel first.";
        }
        return "";
    }

    /** The lot and the entry that it was filled, both or none. */
    private static boolean booked(Desk desk, PremixMade made, Input input, String code, LocalDate keeps) {
        BatchWork work = made.work();
        Grams mass = new Grams(made.mass().value().round(MathContext.DECIMAL64));
        Vessel vessel = work.state().openVessels().stream()
                .filter(one -> one.mixture().net().signum() > 0)
                .findFirst()
                .orElseThrow();
        Lot lot = new Lot(
                        code,
                        made.recipe().materialKey(),
                        work.batch().code(),
                        "made here",
                        mass,
                        desk.today(),
                        Optional.empty(),
                        Optional.of(keeps),
                        made.price(),
                        Lot.State.RELEASED,
                        "")
                .with(Optional.of(made.certificate()), Optional.empty());
        return desk.ledger().together(() -> {
            if (desk.ledger().lots().lot(code).isPresent()) {
                input.refuse("code", "Another lot bears this code.");
                return false;
            }
            LogPost.Outcome outcome = new LogPost(work, input)
                    .take(() -> Optional.of(new BatchEvent.Filled(
                            vessel.name(),
                            PremixShelf.PACK + code,
                            1,
                            mass,
                            Optional.empty(),
                            "on the shelf as a premix")));
            if (outcome.entry().isEmpty() || !desk.ledger().lots().add(lot)) {
                return false;
            }
            desk.ledger()
                    .traces()
                    .madeFrom(
                            code,
                            List.of(new TraceBook.Origin(
                                    Optional.empty(), Optional.of(work.batch().code()), mass)));
            return true;
        });
    }

    /** The lot that a batch of premix became. */
    static Optional<String> lotOf(BatchWork work) {
        return work.state().fills().stream()
                .map(Logged::event)
                .map(BatchEvent.Filled::pack)
                .filter(pack -> pack.startsWith(PremixShelf.PACK))
                .map(pack -> pack.substring(PremixShelf.PACK.length()))
                .findFirst();
    }

    /** Back to the plan, with this premix chosen; the first of two steps leads to the second. */
    private static String after(Desk desk, BatchWork work, String code) {
        Optional<PremixDrawers.Purpose> purpose = new PremixDrawers(desk)
                .purposes()
                .read(Long.toString(work.batch().id()));
        if (purpose.isEmpty()) {
            return "/lots/" + code + "?did=added";
        }
        Optional<Long> second = new PremixDrawers(desk)
                .purposes().all().entrySet().stream()
                        .filter(other ->
                                other.getValue().plan().equals(purpose.get().plan()))
                        .filter(other ->
                                other.getValue().lineId().equals(purpose.get().lineId()))
                        .map(other -> Long.parseLong(other.getKey()))
                        .filter(other -> lotOf(BatchWork.of(desk, other)).isEmpty()
                                && other > work.batch().id())
                        .findFirst();
        return second.map(other -> "/batches/" + other + "/bench?did=added")
                .orElseGet(() ->
                        purpose.get().plan() + "&weigh-" + coded(purpose.get().lineId()) + "=" + coded(code));
    }

    private static String coded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static PremixPage page(Desk desk, PremixMade made, Frame frame, Typed typed, String general) {
        BatchWork work = made.work();
        Material card = work.book()
                .material(made.recipe().materialKey())
                .orElseThrow(() -> new NotFoundResponse("The card of this premix is not on file."));
        String again = typed.value("requestId");
        return new PremixPage(
                frame,
                BatchHead.of(work),
                card.name(),
                card.strength()
                        .map(strength -> shown(strength.percent().middle().value()))
                        .orElse(""),
                made.rootShare().map(PremixRoutes::asMade).orElse(""),
                Masses.shown(made.mass()),
                lotOf(work).orElse(""),
                new PremixDrawers(desk)
                        .purposes()
                        .read(Long.toString(work.batch().id()))
                        .map(PremixDrawers.Purpose::plan)
                        .orElse(""),
                "PMX-" + work.batch().code(),
                desk.today().toString(),
                work.who(),
                again.isEmpty() ? UUID.randomUUID().toString() : again,
                typed,
                general);
    }

    private static String asMade(PercentRange range) {
        double off = (range.high().value().doubleValue() - range.low().value().doubleValue()) / 2;
        return shown(range.middle().value()) + " ± " + Format.figure(off, 2);
    }

    private static String shown(java.math.BigDecimal percent) {
        return new Grams(percent.round(SHOWN)).toString();
    }
}
