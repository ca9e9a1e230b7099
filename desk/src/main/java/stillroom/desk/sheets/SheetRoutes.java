package stillroom.desk.sheets;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.NotFoundResponse;
import java.util.Locale;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.labels.LabelRoutes;
import stillroom.desk.labels.LabelView;
import stillroom.desk.shell.Decimals;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Judgement;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.label.LetterHeights;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.BatchSize;
import stillroom.formulary.plan.PlanProblems;
import stillroom.formulary.quantity.Grams;

/** The printed sheets, as PDF files. */
public final class SheetRoutes {
    private static final Grams USUAL_SIZE = Grams.of("500");
    private static final Balance USUAL_BALANCE =
            new Balance("kitchen balance", Grams.of("0.1"), Optional.empty(), Grams.of("5000"));

    private SheetRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get("/products/{product}/versions/{version}/recipe.pdf", request -> recipe(desk, request));
        routes.get("/products/{product}/versions/{version}/label.pdf", request -> versionLabel(desk, request));
        routes.get("/batches/{batch}/label.pdf", request -> batchLabel(desk, request));
        routes.get("/batches/{id}/record.pdf", request -> record(desk, request));
    }

    private static void recipe(Desk desk, Context request) {
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
        Grams size = size(request);
        PlanProblems.of(version.formula(), new BatchSize.Stated(size)).stream()
                .findFirst()
                .ifPresent(problem -> {
                    throw new BadRequestResponse("There is no recipe yet: " + problem.sentence());
                });
        MaterialBook book = version.kept()
                ? desk.ledger().materials().book(version.cards())
                : desk.ledger().materials().book();
        Recipe recipe = new RecipeSheet(
                        desk.ledger().settings().read(), product, version, book, finestThatHolds(desk, size))
                .of(size, desk.today());
        answer(request, Sheets.onOnePage(desk.pages(), "sheets/recipe.jte", recipe), product.name() + " recipe");
    }

    private static void record(Desk desk, Context request) {
        BatchWork work = BatchWork.of(desk, request);
        BatchRecord record = new RecordSheet(work).record();
        byte[] file = Sheets.set(desk.pages(), "sheets/record.jte", record);
        answer(request, file, "batch record " + work.batch().code());
    }

    private static void versionLabel(Desk desk, Context request) {
        LabelView view = LabelView.find(desk, Desk.id(request, "product"), (int) Desk.id(request, "version"))
                .orElseThrow(() -> new NotFoundResponse("There is no such version of this product."));
        label(desk, request, view, "");
    }

    private static void batchLabel(Desk desk, Context request) {
        Batch batch = LabelRoutes.batch(desk, request);
        label(desk, request, LabelRoutes.viewOf(desk, batch), batch.code());
    }

    private static void label(Desk desk, Context request, LabelView view, String batchCode) {
        boolean demonstration = desk.ledger().settings().read().demonstration();
        byte[] file = new LabelSetter(desk.pages(), LetterHeights.load())
                .set(view.label(batchCode), view.sheet(), demonstration)
                .orElseThrow(() -> new BadRequestResponse("This text does not fit on "
                        + view.sheet().widthMillimetres() + " by "
                        + view.sheet().heightMillimetres()
                        + " mm in letters that may be that small. Choose a larger label, or a folded one."));
        answer(request, file, "label " + batchCode);
    }

    private static Grams size(Context request) {
        String typed = request.queryParam("grams");
        if (typed == null || typed.isBlank()) {
            return USUAL_SIZE;
        }
        return Decimals.read(typed)
                .map(Grams::new)
                .filter(grams -> grams.signum() > 0)
                .orElseThrow(() -> new BadRequestResponse("The batch size \"" + typed + "\" is not a mass in grams."));
    }

    private static Balance finestThatHolds(Desk desk, Grams size) {
        return desk.ledger().equipment().balances().stream()
                .filter(balance -> balance.maximum().compareTo(size) >= 0)
                .min((a, b) -> a.step().compareTo(b.step()))
                .orElse(USUAL_BALANCE);
    }

    private static void answer(Context request, byte[] file, String name) {
        String fileName = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        request.header("Content-Disposition", "inline; filename=\"" + fileName + ".pdf\"");
        request.contentType("application/pdf").result(file);
    }
}
