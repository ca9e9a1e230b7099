package stillroom.desk.recipes;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Judgement;
import stillroom.formulary.Problem;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.HandOut;
import stillroom.formulary.formula.Product;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.PercentRange;
import stillroom.ledger.document.Drawer;

/** One version that is handed out as a recipe, with the cards that it means. */
record Handing(Desk desk, Product product, FormulaVersion version, MaterialBook book) {
    /** @throws ForbiddenResponse where another law governs what the product claims */
    static Handing of(Desk desk, Context request) {
        Product product = desk.ledger()
                .products()
                .product(Desk.id(request, "product"))
                .orElseThrow(() -> new NotFoundResponse("There is no such product."));
        FormulaVersion version = desk.ledger()
                .products()
                .version(product.id(), (int) Desk.id(request, "version"))
                .orElseThrow(() -> new NotFoundResponse("There is no such version of this product."));
        if (Judgement.claims(product.brief()).blocksPublicRecipe()) {
            throw new ForbiddenResponse(
                    "No recipe is handed out for this product: what it claims falls under another law."
                            + " The brief says which. Its formula stays here as a private note.");
        }
        MaterialBook book = version.kept()
                ? desk.ledger().materials().book(version.cards())
                : desk.ledger().materials().book();
        return new Handing(desk, product, version, book);
    }

    String path() {
        return "/products/" + product.id() + "/versions/" + version.number();
    }

    /** What the author said about handing this version out; before that, the notes of the lines and the usual questions. */
    HandOut words() {
        return drawer().read(key()).orElseGet(() -> UsualWords.of(version.formula(), book));
    }

    void write(HandOut words) {
        drawer().write(key(), words);
    }

    private Drawer<HandOut> drawer() {
        return desk.ledger().drawer("hand-out", HandOut.class);
    }

    private String key() {
        return product.id() + "/" + version.number();
    }

    RecipeSheet sheet(HandOut words) {
        return new RecipeSheet(desk.ledger().settings().read(), product, version, book, words);
    }

    Map<String, PercentRange> allowed() {
        return Judgement.limits(desk, Subjects.of(version.formula(), product.brief()), book);
    }

    List<Problem> problems(HandOut words) {
        return sheet(words).problems(allowed(), desk.today());
    }
}
