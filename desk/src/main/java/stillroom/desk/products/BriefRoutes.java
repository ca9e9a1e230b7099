package stillroom.desk.products;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Judgement;
import stillroom.desk.shell.Markets;
import stillroom.desk.shell.Typed;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ProductType;
import stillroom.ledger.workshop.Workshop;

/** The brief with which a product begins. */
final class BriefRoutes {
    private BriefRoutes() {}

    static void add(RoutesConfig routes, Desk desk) {
        routes.get("/products/new", request -> show(desk, request, Optional.empty(), unwritten(desk)));
        routes.post("/products/new", request -> begin(desk, request));
        routes.post("/products/claims", request -> claims(desk, request));
        routes.get("/products/{product}/brief", request -> {
            Product product = Editing.product(desk, request);
            show(desk, request, Optional.of(product), BriefForm.of(product));
        });
        routes.post("/products/{product}/brief", request -> change(desk, request));
    }

    private static Typed unwritten(Desk desk) {
        Workshop workshop = desk.ledger().settings().read();
        Brief plain = Brief.of(ProductType.HAND_WASH);
        Brief here = new Brief(
                plain.type(),
                plain.people(),
                "",
                "",
                plain.phBand(),
                plain.phTarget(),
                plain.priceCeilingPer100g(),
                plain.claims(),
                "",
                Markets.codes().contains(workshop.market()) ? workshop.market() : plain.market());
        return BriefForm.of("", "", here);
    }

    private static BriefPage page(Desk desk, Context request, Optional<Product> product, Typed typed) {
        String title = product.map(known -> "Brief of " + known.name()).orElse("New product");
        return new BriefPage(
                desk.frame(request, title, Section.PRODUCTS),
                product,
                typed,
                Judgement.claims(BriefForm.read(Input.of(typed.values()))),
                desk.ledger().settings().read().currency());
    }

    private static void show(Desk desk, Context request, Optional<Product> product, Typed typed) {
        desk.pages().show(request, "products/brief.jte", page(desk, request, product, typed));
    }

    private static void showAgain(Desk desk, Context request, Optional<Product> product, Input input) {
        desk.pages().showAgain(request, "products/brief.jte", page(desk, request, product, input.typed()));
    }

    /** Only the gate's answer, while the claims are typed; nothing is stored. */
    private static void claims(Desk desk, Context request) {
        Brief brief = BriefForm.read(Input.of(request));
        desk.pages().show(request, "products/_gate.jte", Judgement.claims(brief));
    }

    private static void begin(Desk desk, Context request) {
        Input input = Input.of(request);
        String name = BriefForm.name(input);
        Brief brief = BriefForm.read(input);
        String note = input.text("note");
        if (!input.isSound()) {
            showAgain(desk, request, Optional.empty(), input);
            return;
        }
        FormulaVersion first = ProductRoutes.begin(desk, name, brief, note);
        request.redirect(
                "/products/" + first.productId() + "/versions/" + first.number() + "?did=added", HttpStatus.SEE_OTHER);
    }

    private static void change(Desk desk, Context request) {
        Product product = Editing.product(desk, request);
        Input input = Input.of(request);
        String name = BriefForm.name(input);
        Brief brief = BriefForm.read(input);
        String note = input.text("note");
        if (!input.isSound()) {
            showAgain(desk, request, Optional.of(product), input);
            return;
        }
        desk.ledger().products().change(new Product(product.id(), name, brief, note));
        request.redirect("/products/" + product.id() + "?did=saved", HttpStatus.SEE_OTHER);
    }
}
