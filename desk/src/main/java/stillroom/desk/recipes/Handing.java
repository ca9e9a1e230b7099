package stillroom.desk.recipes;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import java.util.List;
import java.util.Map;
import stillroom.desk.chemistry.Studied;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Judgement;
import stillroom.formulary.Problem;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.HandOut;
import stillroom.formulary.formula.Product;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.PercentRange;
import stillroom.ledger.document.Drawer;

/** One version that is handed out as a recipe, with the cards that it means. */
record Handing(Desk desk, Studied of) {
    /** @throws ForbiddenResponse where another law governs what the product claims */
    static Handing of(Desk desk, Context request) {
        Studied of = Studied.of(desk, request);
        if (Judgement.claims(of.product().brief()).blocksPublicRecipe()) {
            throw new ForbiddenResponse(
                    "No recipe is handed out for this product: what it claims falls under another law."
                            + " The brief says which. Its formula stays here as a private note.");
        }
        return new Handing(desk, of);
    }

    Product product() {
        return of.product();
    }

    FormulaVersion version() {
        return of.version();
    }

    MaterialBook book() {
        return of.book();
    }

    String path() {
        return of.path();
    }

    /** What the author said about handing this version out; before that, the notes of the lines and the usual questions. */
    HandOut words() {
        return drawer().read(key()).orElseGet(() -> UsualWords.of(version().formula(), book()));
    }

    void write(HandOut words) {
        drawer().write(key(), words);
    }

    private Drawer<HandOut> drawer() {
        return desk.ledger().drawer("hand-out", HandOut.class);
    }

    private String key() {
        return product().id() + "/" + version().number();
    }

    RecipeSheet sheet(HandOut words) {
        return new RecipeSheet(desk.ledger().settings().read(), product(), version(), book(), words);
    }

    Map<String, PercentRange> allowed() {
        return Judgement.limits(desk, of.subject(), book());
    }

    List<Problem> problems(HandOut words) {
        return sheet(words).problems(allowed(), desk.today());
    }
}
