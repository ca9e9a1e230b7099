package stillroom.desk.products;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.Comparison;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;

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
        Side one = Side.of(left);
        Side other = Side.of(right);
        SideBySide sides = new SideBySide(
                Comparison.of(left.version().formula(), right.version().formula()), one, other);
        List<Finding> settled = only(one.amounts().findings(), other.amounts().findings());
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
                sides.figures(),
                sides.composition(),
                settled,
                only(other.amounts().findings(), one.amounts().findings()),
                one.amounts().findings().size() - settled.size());
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
