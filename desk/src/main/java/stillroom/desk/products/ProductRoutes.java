package stillroom.desk.products;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.desk.products.ProductListPage.Row;
import stillroom.desk.products.ProductPage.VersionRow;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Judgement;
import stillroom.desk.shell.Typed;
import stillroom.desk.trials.Studies;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Product;
import stillroom.formulary.judgement.Subjects;
import stillroom.ledger.batch.BatchQuery;

/** Products, and the versions of their formulas. */
public final class ProductRoutes {
    /** What a new formula begins with: one phase, to be named. */
    private static final Formula BEGINNING =
            new Formula(List.of(new Phase("p1x1", "First phase", List.of(), List.of())));

    private ProductRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        // Before the address of a product, which would take "new" for an id.
        BriefRoutes.add(routes, desk);
        routes.get("/products", request -> list(desk, request));
        routes.get("/products/{product}", request -> show(desk, request, Typed.NOTHING));
        routes.post("/products/{product}/copy", request -> copy(desk, request));
        routes.post("/products/{product}/versions", request -> newVersion(desk, request));
        FormulaRoutes.add(routes, desk);
        PasteRoutes.add(routes, desk);
        CompareRoutes.add(routes, desk);
    }

    private static void list(Desk desk, Context request) {
        List<Product> products = desk.ledger().products().products();
        int page = Math.max(
                0, Input.ofQuery(request).whole("page", "The page", 1, 10_000).orElse(1) - 1);
        int from = Math.min(page * ProductListPage.SIZE, products.size());
        int to = Math.min(from + ProductListPage.SIZE, products.size());
        List<Row> rows = new ArrayList<>();
        for (Product product : products.subList(from, to)) {
            Optional<FormulaVersion> newest = desk.ledger().products().newest(product.id());
            rows.add(new Row(
                    product,
                    newest,
                    batches(desk, product),
                    newest.map(version -> warnings(desk, product, version)).orElse("")));
        }
        desk.pages()
                .show(
                        request,
                        "products/list.jte",
                        new ProductListPage(
                                desk.frame(request, "Products", Section.PRODUCTS),
                                rows,
                                page == 0 ? "" : "/products?page=" + page,
                                to == products.size() ? "" : "/products?page=" + (page + 2)));
    }

    private static int batches(Desk desk, Product product) {
        BatchQuery ofProduct = new BatchQuery(Set.of(), Optional.of(product.id()), "");
        return desk.ledger().batches().page(ofProduct, 0, 1).total();
    }

    /** A formula with materials of unknown composition is not said to be without a warning. */
    private static String warnings(Desk desk, Product product, FormulaVersion version) {
        Evaluation evaluation =
                Judgement.of(desk, Subjects.of(version.formula(), product.brief()), Editing.book(desk, version));
        int unknown = evaluation.composition().unknown().size();
        String warnings =
                evaluation.warnings().isEmpty() ? "none" : evaluation.warnings().size() + "";
        return unknown == 0
                ? warnings
                : warnings + "; " + unknown + (unknown == 1 ? " material" : " materials") + " unknown";
    }

    private static void show(Desk desk, Context request, Typed typed) {
        Product product = Editing.product(desk, request);
        List<VersionRow> versions = new ArrayList<>();
        for (FormulaVersion version : desk.ledger().products().versions(product.id())) {
            String day = Format.day(version.createdAt().atZone(desk.zone()).toLocalDate());
            versions.add(
                    0,
                    new VersionRow(version, day, desk.ledger().batches().fromVersion(product.id(), version.number())));
        }
        ProductPage page = new ProductPage(
                desk.frame(request, product.name(), Section.PRODUCTS),
                product,
                versions,
                Studies.of(desk, product.id()),
                Judgement.claims(product.brief()),
                desk.ledger().settings().read().currency(),
                typed);
        if (typed.isSound()) {
            desk.pages().show(request, "products/product.jte", page);
        } else {
            desk.pages().showAgain(request, "products/product.jte", page);
        }
    }

    private static void copy(Desk desk, Context request) {
        Product product = Editing.product(desk, request);
        Input input = Input.of(request);
        String name = BriefForm.name(input);
        if (!input.isSound()) {
            show(desk, request, input.typed());
            return;
        }
        Product copied = desk.ledger().together(() -> {
            Product added = desk.ledger().products().add(name, product.brief(), product.note());
            desk.ledger()
                    .products()
                    .newest(product.id())
                    .ifPresent(newest -> begin(
                            desk,
                            added,
                            newest.formula(),
                            "Copied from " + product.name() + ", version " + newest.number() + "."));
            return added;
        });
        request.redirect("/products/" + copied.id() + "?did=added", HttpStatus.SEE_OTHER);
    }

    private static FormulaVersion begin(Desk desk, Product product, Formula formula, String why) {
        return desk.ledger().products().newVersion(product.id(), Optional.empty(), formula, why, desk.now());
    }

    /** A new product with its first version, ready to be written. */
    static FormulaVersion begin(Desk desk, String name, Brief brief, String note) {
        return desk.ledger()
                .together(() -> begin(desk, desk.ledger().products().add(name, brief, note), BEGINNING, ""));
    }

    private static void newVersion(Desk desk, Context request) {
        Product product = Editing.product(desk, request);
        Optional<Integer> from = Input.of(request).whole("from", "The version", 1, Integer.MAX_VALUE);
        FormulaVersion begun = from.isEmpty()
                ? begin(desk, product, BEGINNING, "")
                : desk.ledger()
                        .products()
                        .newVersion(
                                product.id(),
                                from,
                                Editing.version(desk, product, from.get()).formula(),
                                "",
                                desk.now());
        request.redirect(
                "/products/" + product.id() + "/versions/" + begun.number() + (from.isEmpty() ? "" : "?did=copied"),
                HttpStatus.SEE_OTHER);
    }
}
