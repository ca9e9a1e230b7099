package stillroom.desk.recipes;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Judgement;
import stillroom.formulary.Problem;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.HandOut;
import stillroom.formulary.formula.HandOut.LineWords;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Product;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.plan.BatchSize;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlanProblems;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.PercentRange;
import stillroom.ledger.document.Drawer;

/** One version that is handed out as a recipe, with the cards that it means. */
record Handing(Desk desk, Product product, FormulaVersion version, MaterialBook book) {
    private static final Grams USUAL_SIZE = Grams.of("500");
    private static final Grams USUAL_STEP = Grams.of("0.1");

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
        return drawer().read(key()).orElseGet(this::usual);
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

    private HandOut usual() {
        Map<String, LineWords> lines = new LinkedHashMap<>();
        for (Line line : version.formula().lines()) {
            lines.put(line.id(), new LineWords(line.note(), List.of(), differsByMaker(line)));
        }
        return new HandOut(USUAL_SIZE, USUAL_STEP, lines, false, false);
    }

    /** Surfactants, acids and bases come in strengths that differ from house to house. */
    private boolean differsByMaker(Line line) {
        return book.material(line.materialKey())
                .filter(card -> Strengths.middle(card).isPresent())
                .map(Material::family)
                .filter(family -> family == Family.SURFACTANT || family == Family.ACID || family == Family.BASE)
                .isPresent();
    }

    RecipeSheet sheet(HandOut words) {
        return new RecipeSheet(desk.ledger().settings().read(), product, version, book, words);
    }

    Map<String, PercentRange> allowed() {
        return Judgement.limits(desk, Subjects.of(version.formula(), product.brief()), book);
    }

    /** Why there is no recipe at this size and step; empty where there is one. */
    List<Problem> problems(HandOut words) {
        List<Problem> problems =
                new ArrayList<>(PlanProblems.of(version.formula(), new BatchSize.Stated(words.size())));
        if (problems.isEmpty()) {
            Plan plan = sheet(words).plan(allowed(), desk.today());
            plan.lines().forEach(line -> refusal(line).ifPresent(problems::add));
        }
        return problems;
    }

    private Optional<Problem> refusal(PlannedLine line) {
        String name = book.material(line.materialKey()).map(Material::name).orElse(line.materialKey());
        if (line.target().signum() <= 0) {
            return Optional.of(new Problem("size", name + " would be rounded away: make more, or weigh finer."));
        }
        return line.advice().stream()
                .filter(PlannedLine.Advice::refuses)
                .map(advice ->
                        new Problem("size", name + ": " + advice.says() + " " + String.join(" Or: ", advice.choices())))
                .findFirst();
    }
}
