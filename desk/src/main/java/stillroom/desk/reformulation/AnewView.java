package stillroom.desk.reformulation;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntFunction;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame.Section;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.Line;
import stillroom.formulary.material.Material;
import stillroom.formulary.reformulation.Answer;
import stillroom.formulary.reformulation.Bought;
import stillroom.formulary.reformulation.Measure;
import stillroom.formulary.reformulation.Origin;
import stillroom.formulary.reformulation.Result;
import stillroom.formulary.reformulation.Wish;

/** Builds the page of a formula made anew. */
final class AnewView {
    private static final double SHOWN = 0.0005;
    private static final int DECIMALS = 2;
    /** Of costs per 100 g. */
    private static final int MONEY_DECIMALS = 3;

    private static final String COST = "Cost per 100 g";
    /** Cards that lack an index. */
    private static final int MOST_NAMED = 5;
    /** Nobody asks whether a shelf suffices for more than a ton. */
    private static final double MUCH_GRAMS = 1e6;

    private AnewView() {}

    static AnewPage of(Desk desk, Context request, Subjected subjected, Asked asked, Optional<Searching> searching) {
        // Asked first: what ends while the page is written is looked at again, and never seems to have found nothing.
        boolean over = searching.map(Searching::isOver).orElse(true);
        Optional<Result> result = searching.flatMap(Searching::result);
        String query = request.queryString() == null ? "" : request.queryString();
        return new AnewPage(
                desk.frame(request, subjected.product().name() + ", made anew", Section.PRODUCTS),
                subjected.product(),
                subjected.version(),
                subjected.path(),
                query,
                wish(asked, subjected),
                asked.input().typed(),
                subjected.currency(),
                lines(subjected),
                also(subjected, asked),
                shelf(subjected, asked),
                Arrays.stream(Aim.values())
                        .map(aim -> new Choice(aim.name(), aim.words()))
                        .toList(),
                Arrays.stream(Measure.values())
                        .map(each -> new Choice(each.name(), each.words()))
                        .toList(),
                subjected.constituents().entrySet().stream()
                        .map(each -> new Choice(each.getValue(), each.getKey()))
                        .toList(),
                OwnBands.shown(subjected.figures(), asked.figures(subjected), asked.own()),
                asked.allowed().keySet().stream()
                        .map(key -> new Choice(key, subjected.name(key)))
                        .toList(),
                asked.bands().noHarsher(),
                asked.useUp().equals(Asked.EXPIRING)
                        && subjected.expiringBy(Asked.soon(subjected)).isEmpty(),
                searching.isPresent(),
                !over,
                searching.map(Searching::nodes).orElse(0L),
                searching.map(Searching::refused).orElse(""),
                result.map(Result::conflict).orElse(List.of()),
                result.map(found -> ways(found, asked, subjected)).orElse(List.of()),
                buys(result, asked, subjected),
                bestBought(result, asked, subjected),
                result.map(Result::nearest).orElse(List.of()).stream()
                        .map(Material::name)
                        .toList(),
                asked.bought().stream()
                        .map(key -> new Choice(key, subjected.name(key)))
                        .toList(),
                result.map(Result::refused).orElse(List.of()),
                result.map(Result::more).orElse(false),
                over && searching.map(Searching::isStopped).orElse(false),
                cards(
                        searching.map(Searching::found).orElse(List.of()),
                        searching.isPresent() && asked.isAboutNature(asked.wish(subjected)),
                        number -> subjected.path() + "/take/" + number + "?" + query,
                        subjected.currency()),
                curve(asked, searching, subjected.currency()));
    }

    private static List<AnewPage.Way> ways(Result result, Asked asked, Subjected subjected) {
        Wish was = asked.wish(subjected);
        return result.reliefs().stream()
                .map(relief -> new AnewPage.Way(
                        relief.words(), subjected.path() + "?" + Relieved.query(asked.form(), was, relief.wish())))
                .toList();
    }

    private static List<AnewPage.Buy> buys(Optional<Result> result, Asked asked, Subjected subjected) {
        return result.map(Result::bought).orElse(List.of()).stream()
                .map(one -> new AnewPage.Buy(
                        one.card().name(),
                        Format.figure(one.percent(), 1),
                        one.priced(),
                        asked.atMost().isPresent()
                                        && ingredients(one) > asked.atMost().getAsInt()
                                ? ", and " + ingredients(one) + " ingredients"
                                : "",
                        subjected.path() + "?" + Relieved.buying(asked.form(), one)))
                .toList();
    }

    private static long ingredients(Bought one) {
        return one.answer().changes().stream()
                .filter(change -> change.after() > 0)
                .count();
    }

    /** One that is set behind others is not the one that would be taken. */
    private static Optional<AnewPage.Card> bestBought(Optional<Result> result, Asked asked, Subjected subjected) {
        return result.map(Result::bought).orElse(List.of()).stream()
                .findFirst()
                .filter(one -> one.answer().reproaches().isEmpty())
                .map(one -> card(
                        1,
                        one.answer(),
                        asked.isAboutNature(asked.wish(subjected)),
                        subjected.path() + "/take/1?" + Relieved.buying(asked.form(), one),
                        subjected.currency()));
    }

    private static AnewPage.Curve curve(Asked asked, Optional<Searching> searching, String currency) {
        return asked.curve()
                .flatMap(of -> searching
                        .map(Searching::curve)
                        .filter(points -> !points.isEmpty())
                        .map(points -> CurveView.of(of, points, currency)))
                .orElse(AnewPage.Curve.NONE);
    }

    private static List<Choice> lines(Subjected subjected) {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice("", "Nothing; all may stay"));
        subjected.version().formula().lines().stream()
                .map(Line::materialKey)
                .distinct()
                .forEach(key -> choices.add(new Choice(key, subjected.name(key))));
        return choices;
    }

    private static List<AnewPage.Also> also(Subjected subjected, Asked asked) {
        List<String> gone = asked.without().stream()
                .filter(key -> !key.equals(asked.form().get(Asked.WITHOUT)))
                .toList();
        return subjected.version().formula().lines().stream()
                .map(Line::materialKey)
                .distinct()
                .map(key -> new AnewPage.Also(key, subjected.name(key), gone.contains(key)))
                .toList();
    }

    private static List<Choice> shelf(Subjected subjected, Asked asked) {
        TreeMap<String, String> byName = new TreeMap<>();
        subjected.shelf(asked).onHand().keySet().forEach(key -> byName.put(subjected.name(key), key));
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice("", "Nothing"));
        choices.add(new Choice(
                Asked.EXPIRING, "What expires by " + Format.day(Asked.soon(subjected)) + ", of the shelves used here"));
        byName.forEach((name, key) -> choices.add(new Choice(key, name)));
        return choices;
    }

    private static List<AnewPage.Card> cards(
            List<Answer> answers, boolean aboutNature, IntFunction<String> take, String currency) {
        List<AnewPage.Card> cards = new ArrayList<>();
        for (Answer answer : answers) {
            cards.add(card(cards.size() + 1, answer, aboutNature, take.apply(cards.size() + 1), currency));
        }
        return cards;
    }

    private static AnewPage.Card card(int number, Answer answer, boolean aboutNature, String take, String currency) {
        double largest = answer.changes().stream()
                .mapToDouble(change -> Math.abs(change.by()))
                .max()
                .orElse(1);
        List<AnewPage.Row> rows = answer.changes().stream()
                .filter(change -> Math.abs(change.by()) >= SHOWN)
                .map(change -> row(change, Math.max(largest, SHOWN)))
                .toList();
        return new AnewPage.Card(
                number,
                title(answer),
                take,
                cost(answer, currency),
                answer.harshness(),
                answer.proven(),
                answer.passedOver(),
                rows,
                answer.figures().stream()
                        .map(figure -> compared(figure, currency))
                        .toList(),
                answer.givesUp(),
                answer.reproaches().stream().map(Finding::says).toList(),
                enoughFor(answer),
                answer.arisen(),
                answer.prices(),
                aboutNature ? Optional.of(nature(answer.originBefore(), answer.origin())) : Optional.empty());
    }

    private static AnewPage.Nature nature(Origin was, Origin is) {
        return new AnewPage.Nature(
                Format.figure(was.guaranteed(), DECIMALS),
                Format.figure(is.guaranteed(), DECIMALS),
                is.isKnown() ? "" : Format.figure(is.atMost(), DECIMALS),
                is.unknown().stream()
                        .limit(MOST_NAMED)
                        .map(each -> new AnewPage.Missing(
                                each.materialKey(), each.name(), Format.figure(each.percent(), DECIMALS)))
                        .toList(),
                Math.max(0, is.unknown().size() - MOST_NAMED));
    }

    private static String enoughFor(Answer answer) {
        return answer.enoughFor() < MUCH_GRAMS ? Format.significant(answer.enoughFor()) : "";
    }

    private static AnewPage.Row row(Answer.Change change, double largest) {
        double width = 50 * Math.abs(change.by()) / largest;
        boolean less = change.by() < 0;
        return new AnewPage.Row(
                change.name(),
                Format.figure(change.before(), DECIMALS),
                Format.figure(change.after(), DECIMALS),
                (less ? "−" : "+") + Format.figure(Math.abs(change.by()), DECIMALS),
                String.format(Locale.ROOT, "%.2f", less ? 50 - width : 50),
                String.format(Locale.ROOT, "%.2f", width),
                less);
    }

    private static AnewPage.Compared compared(Answer.Compared figure, String currency) {
        boolean cost = figure.name().equals(COST);
        int decimals = cost ? MONEY_DECIMALS : DECIMALS;
        String named = cost ? currency : figure.unit();
        String unit = named.isEmpty() ? "" : " " + named;
        return new AnewPage.Compared(
                figure.name(),
                Format.figure(figure.before(), decimals) + unit,
                Format.figure(figure.after(), decimals) + unit);
    }

    /** From what to what; empty where a price is missing. */
    private static String cost(Answer answer, String currency) {
        return answer.figures().stream()
                .filter(figure -> figure.name().equals(COST))
                .map(figure -> Format.figure(figure.before(), MONEY_DECIMALS) + " to "
                        + Format.figure(figure.after(), MONEY_DECIMALS) + " " + currency)
                .findFirst()
                .orElse("");
    }

    private static String title(Answer answer) {
        List<String> newcomers = answer.changes().stream()
                .filter(change -> change.before() == 0)
                .map(Answer.Change::name)
                .toList();
        if (!newcomers.isEmpty()) {
            return "With " + String.join(" and ", newcomers);
        }
        boolean unchanged = answer.changes().stream().allMatch(change -> Math.abs(change.by()) < SHOWN);
        return unchanged ? "As it is" : "With the same materials";
    }

    /** The reason that stands on the new version. */
    static String why(Asked asked, Subjected subjected, Answer answer) {
        return "Made anew from version " + subjected.version().number() + ": " + wish(asked, subjected) + ". "
                + title(answer) + ".";
    }

    private static String wish(Asked asked, Subjected subjected) {
        List<String> parts = new ArrayList<>();
        if (!asked.without().isEmpty()) {
            parts.add("without "
                    + String.join(
                            " and ",
                            asked.without().stream().map(subjected::name).toList()));
        }
        if (!asked.useUp().isEmpty()) {
            parts.add(
                    asked.useUp().equals(Asked.EXPIRING)
                            ? "using up what expires soon"
                            : "using up " + subjected.name(asked.useUp()));
        }
        if (!asked.bought().isEmpty()) {
            parts.add("with "
                    + String.join(
                            " and ",
                            asked.bought().stream().map(subjected::name).toList())
                    + " bought");
        }
        if (asked.bands().noHarsher()) {
            parts.add("no harsher");
        }
        parts.add(asked.aim().words().toLowerCase(Locale.ROOT));
        return String.join(", ", parts);
    }
}
