package stillroom.desk.law;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import stillroom.desk.law.TablePage.Row;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Judgement;
import stillroom.desk.shell.Typed;
import stillroom.formulary.rule.MarketLaw;
import stillroom.formulary.rule.Rule;
import stillroom.formulary.rule.RuleBook;

/** The law as recorded, as of any day, and what another day of it changes. */
public final class LawRoutes {
    private final Desk desk;
    /** The newest sweep; it lives as long as the program runs. */
    private volatile Optional<Sweep> sweep = Optional.empty();

    private LawRoutes(Desk desk) {
        this.desk = desk;
    }

    public static void add(RoutesConfig routes, Desk desk) {
        LawRoutes law = new LawRoutes(desk);
        routes.get("/law", law::show);
        routes.get("/law/tables/{market}/{table}", law::table);
        routes.get("/law/sweep", request -> law.sweep(request, Typed.NOTHING));
        routes.post("/law/sweep", law::begin);
        routes.post("/law/sweep/stop", law::stop);
        routes.get("/products/{product}/law", request -> ProductLawView.show(desk, request));
    }

    private void show(Context request) {
        RuleBook rules = Judgement.rules();
        Input input = Input.ofQuery(request);
        LocalDate day = (input.text("on").isEmpty() ? Optional.<LocalDate>empty() : input.day("on", "The day"))
                .orElse(desk.today());
        String usual = desk.ledger().settings().read().market();
        String market = rules.law(input.text("market"))
                .or(() -> rules.law(usual))
                .map(MarketLaw::market)
                .orElse("EU");
        LawPage page = new LawPage(
                desk.frame(request, "Law", Section.WORKSHOP),
                new Typed(
                        java.util.Map.of("market", market, "on", input.typed().value("on", day.toString())),
                        input.typed().problems()),
                markets(rules),
                market,
                marketWords(market),
                day,
                Format.day(day),
                Format.day(rules.recordedOn(market)),
                rules.law(market).map(law -> LawView.tables(law, day)).orElse(List.of()),
                rules.notCovered().getOrDefault(market, ""),
                LawView.turnings(rules, day),
                Choice.of(Sweep.Which.class, Sweep.Which::words),
                sweep.map(Sweep::isRunning).orElse(false));
        if (page.typed().isSound()) {
            desk.pages().show(request, "law/law.jte", page);
        } else {
            desk.pages().showAgain(request, "law/law.jte", page);
        }
    }

    private static List<Choice> markets(RuleBook rules) {
        return new TreeSet<>(rules.laws().keySet())
                .stream().map(code -> new Choice(code, marketWords(code))).toList();
    }

    private static String marketWords(String market) {
        return switch (market) {
            case "EU" -> "European Union";
            case "UK" -> "Great Britain";
            case "US" -> "United States";
            default -> market;
        };
    }

    private void table(Context request) {
        String market = request.pathParam("market");
        String table = request.pathParam("table");
        Input input = Input.ofQuery(request);
        LocalDate day = input.day("on", "The day").orElse(desk.today());
        List<Row> rows = Judgement.rules().law(market).stream()
                .flatMap(law -> law.rules().stream())
                .filter(rule -> rule.table().equals(table))
                .map(rule -> row(rule, day))
                .toList();
        if (rows.isEmpty()) {
            throw new NotFoundResponse("The record has no such table.");
        }
        desk.pages()
                .show(
                        request,
                        "law/table.jte",
                        new TablePage(
                                desk.frame(request, LawView.words(table), Section.WORKSHOP),
                                market,
                                marketWords(market),
                                LawView.words(table),
                                day,
                                Format.day(day),
                                rows));
    }

    private static Row row(Rule rule, LocalDate day) {
        return new Row(
                rule.id(),
                rule.entry(),
                rule.name(),
                String.join(", ", rule.substances()),
                LawView.asks(rule),
                LawView.scope(rule),
                LawView.days(rule),
                rule.span().countsOn(day),
                rule.citation().paragraph() + " (" + rule.citation().sourceKey() + ")",
                rule.citation().readOn().map(read -> "read " + Format.day(read)).orElse("unread"),
                rule.span().amendedBy(),
                rule.note());
    }

    private void sweep(Context request, Typed typed) {
        int page = Input.ofQuery(request).whole("page", "The page", 1, 10_000).orElse(1) - 1;
        SweepPage shown = SweepView.of(
                desk.frame(request, "Every formula on another day", Section.WORKSHOP), filled(typed), sweep, page);
        if (typed.isSound()) {
            desk.pages().show(request, "law/sweep.jte", shown);
        } else {
            desk.pages().showAgain(request, "law/sweep.jte", shown);
        }
    }

    /** From today to the next day on which a row turns, unless something else was typed. */
    private Typed filled(Typed typed) {
        LocalDate today = desk.today();
        LocalDate next = LawView.turnings(Judgement.rules(), today).stream()
                .map(LawPage.Turning::day)
                .findFirst()
                .orElse(today.plusYears(1));
        return new Typed(
                java.util.Map.of(
                        "from", typed.value("from", today.toString()),
                        "to", typed.value("to", next.toString()),
                        "which", typed.value("which", Sweep.Which.NEWEST.name())),
                typed.problems());
    }

    private void begin(Context request) {
        Input input = Input.of(request);
        Optional<LocalDate> from = input.day("from", "The first day");
        Optional<LocalDate> to = input.day("to", "The other day");
        Optional<Sweep.Which> which = input.choice("which", "The formulas", Sweep.Which.class);
        if (!input.hasProblem("from") && from.isEmpty()) {
            input.refuse("from", "Name the first day.");
        }
        if (!input.hasProblem("to") && to.isEmpty()) {
            input.refuse("to", "Name the other day.");
        }
        if (input.isSound() && to.get().isBefore(from.get())) {
            input.refuse("to", "The other day lies before the first one.");
        }
        if (sweep.map(Sweep::isRunning).orElse(false)) {
            input.refuse("from", "Formulas are being judged already; stop that first, or wait.");
        }
        if (!input.isSound() || from.isEmpty() || to.isEmpty()) {
            sweep(request, input.typed());
            return;
        }
        Sweep.Wish wish = new Sweep.Wish(from.get(), to.get(), which.orElse(Sweep.Which.NEWEST));
        startUnlessRunning(wish);
        request.redirect("/law/sweep", HttpStatus.SEE_OTHER);
    }

    private synchronized void startUnlessRunning(Sweep.Wish wish) {
        if (!sweep.map(Sweep::isRunning).orElse(false)) {
            sweep = Optional.of(Sweep.begin(desk.ledger(), Judgement.comparison(), wish));
        }
    }

    private void stop(Context request) {
        sweep.ifPresent(Sweep::stop);
        request.redirect("/law/sweep", HttpStatus.SEE_OTHER);
    }
}
