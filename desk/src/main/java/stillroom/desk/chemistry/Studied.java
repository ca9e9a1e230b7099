package stillroom.desk.chemistry;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import stillroom.desk.shell.Desk;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.material.MaterialBook;

/**
 * A version that a page looks into, with the cards that it means: those of its day where it was kept, else those of now.
 */
public record Studied(Product product, FormulaVersion version, MaterialBook book) {
    /** The version in the path of a request. */
    public static Studied of(Desk desk, Context request) {
        Product product = desk.ledger()
                .products()
                .product(Desk.id(request, "product"))
                .orElseThrow(() -> new NotFoundResponse("There is no such product."));
        FormulaVersion version = desk.ledger()
                .products()
                .version(product.id(), (int) Desk.id(request, "version"))
                .orElseThrow(() -> new NotFoundResponse("There is no such version of this product."));
        MaterialBook book = desk.ledger().materials().book(version);
        return new Studied(product, version, book);
    }

    public Subject subject() {
        return Subjects.of(version.formula(), product.brief());
    }

    public String path() {
        return "/products/" + product.id() + "/versions/" + version.number();
    }

    /** "Hand wash, version 2". */
    public String about() {
        return product.name() + ", version " + version.number();
    }
}
