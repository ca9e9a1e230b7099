package stillroom.desk.batches.freehand;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchCode;
import stillroom.desk.batches.Who;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.formulary.formula.ProductType;

/** Weighing free hand: the batch comes first, its log becomes a formula afterwards. */
public final class FreeHandRoutes {
    private static final String PATH = "/batches/free-hand";
    private static final String TEMPLATE = "batches/freehand/freehand.jte";

    private FreeHandRoutes() {}

    public static void add(RoutesConfig routes, Desk desk) {
        routes.get(
                PATH,
                request ->
                        desk.pages().show(request, TEMPLATE, page(desk, frame(desk, request), Input.ofQuery(request))));
        routes.post(PATH, request -> begin(desk, request));
    }

    private static void begin(Desk desk, Context request) {
        Input input = Input.of(request);
        Optional<Long> batch = new FreeHandBeginning(desk, input).begin();
        if (batch.isPresent()) {
            request.redirect("/batches/" + batch.get() + "/bench?did=added", HttpStatus.SEE_OTHER);
            return;
        }
        desk.pages().showAgain(request, TEMPLATE, page(desk, frame(desk, request), input));
    }

    private static Frame frame(Desk desk, Context request) {
        return desk.frame(request, "Weigh free hand", Section.BATCHES);
    }

    private static FreeHandPage page(Desk desk, Frame frame, Input input) {
        List<Choice> products = new ArrayList<>(List.of(new Choice("", "a new product, named below")));
        desk.ledger().products().products().stream()
                .map(product -> new Choice(Long.toString(product.id()), product.name()))
                .forEach(products::add);
        return new FreeHandPage(
                frame,
                input.typed(),
                products,
                Choice.of(ProductType.class, ProductType::words),
                BatchCode.proposed(desk),
                Who.ofNewest(desk.ledger()).pours());
    }
}
