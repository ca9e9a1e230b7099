package stillroom.desk.classes;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.Cards;
import stillroom.desk.batches.Who;
import stillroom.desk.batches.premix.PremixBeginning;
import stillroom.desk.chemistry.Studied;
import stillroom.desk.classes.NewClassPage.Earlier;
import stillroom.desk.classes.NewClassPage.LineChoice;
import stillroom.desk.sheets.Sheets;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Judgement;
import stillroom.desk.shell.Typed;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Line;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.ClassOf;
import stillroom.formulary.plan.PremixPlan;
import stillroom.formulary.quantity.Grams;

/** Classes: setting one up, its page, its premixes, its batches, its grid and its sheets. */
public final class ClassRoutes {
    private static final String VERSION = "/products/{product}/versions/{version}/class";
    private static final String ONE = "/classes/{class}";

    private ClassRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get(VERSION, request -> ask(desk, request));
        routes.post(VERSION, request -> setUp(desk, request));
        routes.get(ONE, request -> show(desk, request));
        routes.post(ONE + "/premix/{line}", request -> premix(desk, request));
        routes.post(ONE + "/begin", request -> begin(desk, request));
        routes.post(ONE + "/grid", request -> grid(desk, request));
        routes.get(ONE + "/sheets.pdf", request -> sheets(desk, request));
        routes.get(ONE + "/labels.pdf", request -> labels(desk, request));
    }

    private static void ask(Desk desk, Context request) {
        Studied of = Studied.of(desk, request);
        Typed usual = new Typed(ClassForm.usual(of.version(), of.book(), desk.today()), List.of());
        desk.pages().show(request, "classes/new.jte", newPage(desk, request, of, usual));
    }

    private static void setUp(Desk desk, Context request) {
        Studied of = Studied.of(desk, request);
        Input input = Input.of(request);
        if (Judgement.claims(of.product().brief()).blocksPublicRecipe()) {
            input.refuse("title", "No recipe is handed out for this product: what it claims falls under another law.");
        }
        Optional<ClassOf> read = ClassForm.read(input, of.version());
        if (read.isEmpty() || !input.isSound()) {
            desk.pages().showAgain(request, "classes/new.jte", newPage(desk, request, of, input.typed()));
            return;
        }
        long number = desk.ledger().together(() -> {
            long free = 1
                    + Lesson.drawer(desk).all().keySet().stream()
                            .mapToLong(Long::parseLong)
                            .max()
                            .orElse(0);
            Lesson.drawer(desk).write(Long.toString(free), read.get());
            return free;
        });
        request.redirect("/classes/" + number + "?did=added", HttpStatus.SEE_OTHER);
    }

    private static NewClassPage newPage(Desk desk, Context request, Studied of, Typed typed) {
        Cards cards = new Cards(of.book());
        List<Line> carriers = ClassForm.carriers(of.version());
        List<LineChoice> lines = of.version().formula().lines().stream()
                .filter(line -> line.amount() instanceof Amount.Fixed)
                .map(line -> choice(line, carriers, cards))
                .toList();
        List<Earlier> earlier = new ArrayList<>();
        Lesson.drawer(desk).all().forEach((key, lesson) -> {
            if (lesson.productId() == of.product().id()) {
                earlier.add(new Earlier("/classes/" + key, lesson.title() + ", " + Format.day(lesson.day())));
            }
        });
        return new NewClassPage(
                desk.frame(request, "A class", Section.PRODUCTS), of.about(), of.path(), typed, lines, earlier);
    }

    private static LineChoice choice(Line line, List<Line> carriers, Cards cards) {
        List<Choice> choices = new ArrayList<>(List.of(new Choice("", "weighed as it is")));
        carriers.stream()
                .filter(carrier -> !carrier.id().equals(line.id()))
                .forEach(carrier ->
                        choices.add(new Choice(carrier.id(), "as a premix in " + cards.name(carrier.materialKey()))));
        return new LineChoice("premix-" + line.id(), cards.name(line.materialKey()), choices);
    }

    private static void show(Desk desk, Context request) {
        Lesson lesson = Lesson.of(desk, request);
        desk.pages().show(request, "classes/class.jte", ClassView.page(lesson, request, Typed.NOTHING));
    }

    private static void premix(Desk desk, Context request) {
        Lesson lesson = Lesson.of(desk, request);
        PremixPlan premix = lesson.premix(request.pathParam("line"))
                .orElseThrow(() -> new BadRequestResponse("This line cannot be weighed as a premix in this class."));
        List<Balance> owned = desk.ledger().equipment().balances();
        List<Balance> balances = owned.isEmpty()
                ? List.of(new Balance("balance", lesson.of().step(), Optional.empty(), Grams.of("100000")))
                : owned;
        if (owned.isEmpty()) {
            desk.ledger().equipment().writeBalances(balances);
        }
        String who = Who.begins(Input.of(request).text("who"), desk.ledger());
        long batch = new PremixBeginning(desk, balances).begin(premix, who, lesson.path());
        request.redirect("/batches/" + batch + "/bench?did=planned", HttpStatus.SEE_OTHER);
    }

    private static void begin(Desk desk, Context request) {
        Lesson lesson = Lesson.of(desk, request);
        Input input = Input.of(request);
        String who = input.required("who", "The name of the teacher");
        var plan = lesson.set().plan().filter(one -> !one.refused());
        if (plan.isEmpty()) {
            input.refuse("who", "This class cannot begin as it stands; the page says why.");
        }
        if (!lesson.of().batches().isEmpty()) {
            request.redirect(lesson.path(), HttpStatus.SEE_OTHER);
        } else if (input.isSound()) {
            new ClassWork(lesson).begin(plan.orElseThrow(), who);
            request.redirect(lesson.path() + "?did=planned", HttpStatus.SEE_OTHER);
        } else {
            desk.pages().showAgain(request, "classes/class.jte", ClassView.page(lesson, request, input.typed()));
        }
    }

    private static void grid(Desk desk, Context request) {
        Lesson lesson = Lesson.of(desk, request);
        Input input = Input.of(request);
        new ClassWork(lesson).take(input);
        if (input.isSound()) {
            request.redirect(lesson.path() + "?did=logged#grid", HttpStatus.SEE_OTHER);
        } else {
            desk.pages().showAgain(request, "classes/class.jte", ClassView.page(lesson, request, input.typed()));
        }
    }

    private static void sheets(Desk desk, Context request) {
        Lesson lesson = Lesson.of(desk, request);
        byte[] file = Sheets.onPages(
                desk.pages(),
                "classes/sheets.jte",
                ClassSheets.of(lesson),
                lesson.of().sets());
        Sheets.answer(request, file, lesson.of().title() + " sheets");
    }

    private static void labels(Desk desk, Context request) {
        Lesson lesson = Lesson.of(desk, request);
        byte[] file = Sheets.set(desk.pages(), "classes/labels.jte", HomeLabels.of(lesson));
        Sheets.answer(request, file, lesson.of().title() + " labels");
    }
}
