package stillroom.desk.products;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Judgement;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.Comparison;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.judgement.Subjects;

/** Two versions of a product side by side. */
final class CompareRoutes {
    private CompareRoutes() {}

    static void add(RoutesConfig routes, Desk desk) {
        routes.get("/products/{product}/compare", request -> show(desk, request));
    }

    private static void show(Desk desk, Context request) {
        Product product = Editing.product(desk, request);
        Editing left = Editing.of(desk, product, asked(desk, request, product, "left"));
        Editing right = Editing.of(desk, product, asked(desk, request, product, "right"));
        desk.pages().show(request, "products/compare.jte", page(desk, request, left, right));
    }

    private static FormulaVersion asked(Desk desk, Context request, Product product, String side) {
        String typed = request.queryParam(side);
        long number = typed != null && typed.matches("\\d{1,9}") ? Long.parseLong(typed) : 0;
        return Editing.version(desk, product, number);
    }

    private static ComparePage page(Desk desk, Context request, Editing left, Editing right) {
        Product product = left.product();
        Amounts before = amounts(left);
        Amounts after = amounts(right);
        SideBySide sides = new SideBySide(
                Comparison.of(left.version().formula(), right.version().formula()),
                left.cards(),
                right.cards(),
                left.decimals());
        List<Finding> settled = only(before.findings(), after.findings());
        return new ComparePage(
                desk.frame(request, "Versions of " + product.name(), Section.PRODUCTS),
                product,
                left.version(),
                right.version(),
                desk.ledger().products().versions(product.id()).stream()
                        .map(version -> new Choice(Integer.toString(version.number()), "Version " + version.number()))
                        .toList(),
                sides.lines(),
                sides.steps(),
                SideBySide.figures(before, after),
                settled,
                only(after.findings(), before.findings()),
                before.findings().size() - settled.size());
    }

    private static Amounts amounts(Editing editing) {
        return Amounts.of(
                Judgement.of(
                        editing.desk(),
                        Subjects.of(
                                editing.version().formula(), editing.product().brief()),
                        editing.book()),
                editing.workshop());
    }

    /** The findings that have no like (same rule, same lines, same words) on the other side. */
    private static List<Finding> only(List<Finding> here, List<Finding> there) {
        return here.stream()
                .filter(finding -> there.stream()
                        .noneMatch(other -> other.rule().equals(finding.rule())
                                && other.lines().equals(finding.lines())
                                && other.says().equals(finding.says())))
                .toList();
    }
}
