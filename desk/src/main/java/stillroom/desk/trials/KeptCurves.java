package stillroom.desk.trials;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.formula.Product;
import stillroom.formulary.trial.ViscosityCurve;
import stillroom.formulary.trial.ViscosityCurve.Against;
import stillroom.formulary.trial.ViscosityCurve.Reading;
import stillroom.formulary.trial.ViscosityCurve.Series;
import stillroom.ledger.document.Drawer;
import stillroom.science.curve.Conditions;

/** Curves that are kept with their product, and shown again with further readings. */
final class KeptCurves {
    private final Desk desk;
    private final Drawer<ViscosityCurve> drawer;

    KeptCurves(Desk desk) {
        this.desk = desk;
        this.drawer = desk.ledger().drawer(ViscosityCurve.DRAWER, ViscosityCurve.class);
    }

    static void add(RoutesConfig routes, Desk desk) {
        KeptCurves curves = new KeptCurves(desk);
        routes.post("/trials/curves", curves::keep);
        routes.get("/trials/curves/{key}", curves::look);
        routes.post("/trials/curves/{key}", curves::more);
        routes.post("/trials/curves/{key}/out", curves::out);
    }

    List<ViscosityCurve> all() {
        return drawer.list();
    }

    private ViscosityCurve one(Context request) {
        return drawer.read(request.pathParam("key"))
                .orElseThrow(() -> new NotFoundResponse("There is no curve at this address."));
    }

    private void keep(Context request) {
        Input input = Input.of(request);
        Against against = input.choice("against", "What it is read against", Against.class)
                .orElse(Against.DOSE);
        String name = input.required("name", "The name of the curve");
        Optional<Product> product = input.whole("product", "The product", 1, Integer.MAX_VALUE)
                .flatMap(id -> desk.ledger().products().product(id));
        if (product.isEmpty()) {
            input.refuse("product", "There is no such product.");
        }
        double brought = input.number("brought", "The electrolyte that other materials bring", "0", "30")
                .orElse(0.0);
        Optional<Double> wanted = input.reading("wanted", "The wanted viscosity", "0.000001", "1000000000");
        Optional<Series> series = series(input, against);
        if (series.isEmpty() || !input.isSound()) {
            CurveRoutes.showAgain(desk, request, input, against);
            return;
        }
        String key = desk.ledger().together(() -> {
            String free = String.format("v%04d", drawer.list().size() + 1);
            drawer.write(
                    free,
                    new ViscosityCurve(
                            free, product.orElseThrow().id(), against, name, brought, wanted, List.of(series.get())));
            return free;
        });
        request.redirect("/trials/curves/" + key + "?did=added", HttpStatus.SEE_OTHER);
    }

    private static Optional<Series> series(Input input, Against against) {
        Optional<Conditions> conditions = ConditionsForm.read(input);
        conditions
                .filter(one -> against == Against.SHEAR_RATE && !one.geometry().definedShearRate())
                .ifPresent(one -> input.refuse("geometry", FlowWork.NOT_DEFINED));
        List<Reading> readings = new ArrayList<>();
        for (double[] pair : Readings.pairs(input, "readings")) {
            boolean allowed = against == Against.DOSE ? SaltWork.allowed(pair[0], pair[1]) : pair[0] > 0 && pair[1] > 0;
            if (allowed) {
                readings.add(new Reading(pair[0], pair[1]));
            } else {
                input.refuse("readings", against == Against.DOSE ? SaltWork.NOT_ALLOWED : FlowWork.NOT_ALLOWED);
            }
        }
        if (readings.isEmpty() && !input.hasProblem("readings")) {
            input.refuse("readings", "The readings are missing.");
        }
        return input.isSound() ? conditions.map(one -> new Series(one, readings)) : Optional.empty();
    }

    /** Another viscosity may be asked for in the address; that keeps nothing. */
    private void look(Context request) {
        Input input = Input.ofQuery(request);
        Optional<Double> wanted = input.reading("wanted", "The wanted viscosity", "0.000001", "1000000000");
        show(request, wanted, input.typed(), input.isSound() ? HttpStatus.OK : HttpStatus.UNPROCESSABLE_CONTENT);
    }

    private void show(Context request, Optional<Double> wanted, Typed typed, HttpStatus status) {
        ViscosityCurve curve = one(request);
        String product = desk.ledger()
                .products()
                .product(curve.product())
                .map(Product::name)
                .orElse("");
        Frame frame = desk.frame(request, curve.name(), Section.PRODUCTS);
        int as = Input.ofQuery(request)
                .whole("as", "The readings", 1, Integer.MAX_VALUE)
                .orElse(1);
        KeptCurvePage.Asked asked = new KeptCurvePage.Asked(as, wanted.or(curve::wanted));
        request.status(status)
                .html(desk.pages().render("trials/kept.jte", KeptCurvePage.of(frame, curve, product, asked, typed)));
    }

    private void more(Context request) {
        Input input = Input.of(request);
        Optional<Series> series = series(input, one(request).against());
        change(request, input, curve -> series.map(curve::with));
    }

    private void out(Context request) {
        Input input = Input.of(request);
        int number = input.whole("series", "The readings", 1, Integer.MAX_VALUE).orElse(0);
        change(
                request,
                input,
                curve -> number >= 1
                                && number <= curve.series().size()
                                && curve.series().size() > 1
                        ? Optional.of(curve.without(number - 1))
                        : input.refuse("count", "These readings are not there any more."));
    }

    private interface Change {
        Optional<ViscosityCurve> of(ViscosityCurve curve);
    }

    /** A form that was opened before somebody else's change answers with what was typed, and changes nothing. */
    private void change(Context request, Input input, Change change) {
        boolean late = desk.ledger().together(() -> {
            ViscosityCurve now = one(request);
            if (!input.text("count").equals("" + now.series().size())) {
                return true;
            }
            change.of(now).ifPresent(changed -> drawer.write(changed.key(), changed));
            return false;
        });
        if (late) {
            input.refuse(
                    "count",
                    "These readings were changed elsewhere meanwhile; nothing was saved. What you typed is here: look at the"
                            + " readings above, then press again.");
        }
        if (input.isSound()) {
            request.redirect("/trials/curves/" + request.pathParam("key") + "?did=saved", HttpStatus.SEE_OTHER);
        } else {
            show(
                    request,
                    Optional.empty(),
                    input.typed(),
                    late ? HttpStatus.CONFLICT : HttpStatus.UNPROCESSABLE_CONTENT);
        }
    }
}
