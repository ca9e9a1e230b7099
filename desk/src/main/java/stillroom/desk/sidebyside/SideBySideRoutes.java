package stillroom.desk.sidebyside;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import stillroom.desk.pictures.Shots;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.sidebyside.SideBySidePage.Column;
import stillroom.desk.sidebyside.SideBySidePage.Row;
import stillroom.desk.trials.Studies;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;

/** Several versions, of one product or of several, beside each other: {@code /side-by-side?of=1.2&of=1.3}. */
public final class SideBySideRoutes {
    private static final int MOST = 6;

    private SideBySideRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get("/side-by-side", request -> show(desk, request));
    }

    private static void show(Desk desk, Context request) {
        List<String> asked = request.queryParams("of").stream()
                .filter(one -> !one.isEmpty())
                .distinct()
                .toList();
        List<Version> versions =
                asked.stream().limit(MOST).map(one -> version(desk, one)).toList();
        int tooMany = Math.max(0, asked.size() - MOST);
        desk.pages().show(request, "sidebyside/several.jte", page(desk, request, versions, tooMany));
    }

    private static Version version(Desk desk, String asked) {
        if (!asked.matches("\\d{1,9}\\.\\d{1,9}")) {
            throw new NotFoundResponse("There is no such version.");
        }
        String[] parts = asked.split("\\.");
        Product product = desk.ledger()
                .products()
                .product(Long.parseLong(parts[0]))
                .orElseThrow(() -> new NotFoundResponse("There is no such product."));
        FormulaVersion version = desk.ledger()
                .products()
                .version(product.id(), Integer.parseInt(parts[1]))
                .orElseThrow(() -> new NotFoundResponse(product.name() + " has no version " + parts[1] + "."));
        return Version.of(desk, product, version);
    }

    private static SideBySidePage page(Desk desk, Context request, List<Version> versions, int tooMany) {
        return new SideBySidePage(
                desk.frame(request, "Side by side", Section.PRODUCTS),
                versions.stream().map(one -> column(one, versions)).toList(),
                versions.size() < MOST ? others(desk, versions) : List.of(),
                tooMany,
                rows(versions, Version::lines, "none"),
                rows(versions, Version::substances, "none"),
                rows(versions, Version::figures, "not known"),
                rows(versions, Version::measured, "not a run"),
                rows(versions, Version::readings, "none"));
    }

    private static Column column(Version one, List<Version> all) {
        String without = all.stream()
                .filter(other -> other != one)
                .map(other -> "of=" + other.address())
                .collect(Collectors.joining("&"));
        return new Column(
                one.address(),
                one.name(),
                "/products/" + one.product().id() + "/versions/" + one.version().number(),
                "/side-by-side?" + without,
                one.batches().stream()
                        .map(work -> new Choice(work.path(), work.batch().code()))
                        .toList(),
                one.evaluation().warnings().stream().map(Finding::says).toList(),
                one.batches().stream()
                        .flatMap(work -> Shots.of(work).stream())
                        .filter(shot -> !shot.struck())
                        .toList());
    }

    private static List<Row> rows(
            List<Version> versions, Function<Version, Map<String, String>> shown, String otherwise) {
        List<Map<String, String>> sides = versions.stream().map(shown).toList();
        Set<String> names = new LinkedHashSet<>();
        sides.forEach(side -> names.addAll(side.keySet()));
        List<Row> rows = new ArrayList<>();
        for (String name : names) {
            rows.add(new Row(
                    name,
                    sides.stream()
                            .map(side -> side.getOrDefault(name, otherwise))
                            .toList()));
        }
        return rows;
    }

    private static List<Choice> others(Desk desk, List<Version> versions) {
        Map<String, String> runs = Studies.runNames(desk);
        List<Choice> others = new ArrayList<>();
        for (Product product : desk.ledger().products().products()) {
            for (FormulaVersion version : desk.ledger().products().versions(product.id())) {
                String address = product.id() + "." + version.number();
                if (versions.stream().noneMatch(one -> one.address().equals(address))) {
                    others.add(new Choice(
                            address, runs.getOrDefault(address, product.name() + ", version " + version.number())));
                }
            }
        }
        return others;
    }
}
