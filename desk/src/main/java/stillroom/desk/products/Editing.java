package stillroom.desk.products;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import stillroom.desk.shell.Desk;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.material.MaterialBook;
import stillroom.ledger.workshop.Workshop;

/** One version that a request is about, with the cards that it means. */
record Editing(Desk desk, Product product, FormulaVersion version, MaterialBook book, Cards cards, Workshop workshop) {
    static Editing of(Desk desk, Context request) {
        Product product = product(desk, request);
        FormulaVersion version = version(desk, product, Desk.id(request, "number"));
        return of(desk, product, version);
    }

    static Editing of(Desk desk, Product product, FormulaVersion version) {
        MaterialBook book = book(desk, version);
        return new Editing(
                desk,
                product,
                version,
                book,
                Cards.of(book),
                desk.ledger().settings().read());
    }

    /** The cards as they stand now, for a kept version those that it meant. */
    static MaterialBook book(Desk desk, FormulaVersion version) {
        return desk.ledger().materials().book(version);
    }

    static Product product(Desk desk, Context request) {
        return desk.ledger()
                .products()
                .product(Desk.id(request, "product"))
                .orElseThrow(() -> new NotFoundResponse("There is no such product."));
    }

    static FormulaVersion version(Desk desk, Product product, long number) {
        return desk.ledger()
                .products()
                .version(product.id(), (int) Math.max(0, Math.min(number, Integer.MAX_VALUE)))
                .orElseThrow(() -> new NotFoundResponse(product.name() + " has no version " + number + "."));
    }

    /** The same with the version as it stands after a change. */
    Editing with(FormulaVersion changed) {
        return new Editing(desk, product, changed, book, cards, workshop);
    }

    String path() {
        return "/products/" + product.id() + "/versions/" + version.number();
    }

    int decimals() {
        return workshop.decimalsShown();
    }

    Draft stored() {
        return DraftWriting.of(version.formula(), version.why(), cards, decimals());
    }
}
