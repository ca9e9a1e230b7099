package stillroom.desk.patterns;

import io.javalin.config.RoutesConfig;
import java.util.List;
import java.util.Map;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Typed;
import stillroom.formulary.Problem;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Finding;

/** Every building block on one page, so that looks and accessibility can be judged in one place. */
public final class PatternRoutes {
    private PatternRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get(
                "/patterns",
                request -> desk.pages()
                        .show(
                                request,
                                "patterns/patterns.jte",
                                new PatternPage(
                                        desk.frame("Patterns", Section.WORKSHOP), wrongForm(), choices(), findings())));
    }

    private static Typed wrongForm() {
        return new Typed(
                Map.of("share", "1O3"),
                List.of(new Problem("share", "Percent is not a number that can be read: type it like 2.5 or 2,5.")));
    }

    private static List<Choice> choices() {
        return List.of(new Choice("a", "One of two"), new Choice("b", "The other"));
    }

    private static List<Finding> findings() {
        return List.of(Finding.Kind.values()).stream()
                .map(kind -> new Finding(
                        kind,
                        "pattern.example",
                        "common practice, no source",
                        List.of(),
                        List.of(Figure.exactly("example", 1, "%", "as typed")),
                        "What was found, in one sentence with its figures.",
                        "What would mend it, in one sentence."))
                .toList();
    }
}
