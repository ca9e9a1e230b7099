package stillroom.desk.workshop;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stillroom.desk.shell.Decimals;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.plan.Tolerances;
import stillroom.formulary.quantity.Percent;

/** How exact the weighing is to be, as this workshop wants it. */
public final class ToleranceRoutes {
    private static final String PATH = "/workshop/tolerances";
    private static final String TEMPLATE = "workshop/tolerances.jte";
    private static final String KEY = "now";

    private ToleranceRoutes() {}

    /** What holds in this workshop; the usual ones until somebody says otherwise. */
    public static Tolerances of(Desk desk) {
        return desk.ledger().drawer("tolerances", Tolerances.class).read(KEY).orElse(Tolerances.USUAL);
    }

    static void add(RoutesConfig routes, Desk desk) {
        routes.get(PATH, request -> show(desk, request));
        routes.post(PATH, request -> change(desk, request));
    }

    private static void show(Desk desk, Context request) {
        Typed fields = new Typed(fields(desk, of(desk)), List.of());
        desk.pages().show(request, TEMPLATE, new TolerancePage(frame(desk, request), fields));
    }

    private static Frame frame(Desk desk, Context request) {
        return desk.frame(request, "How exact the weighing is to be", Section.WORKSHOP);
    }

    private static Map<String, String> fields(Desk desk, Tolerances tolerances) {
        MaterialBook book = desk.ledger().materials().book();
        Map<String, String> fields = new HashMap<>();
        fields.put("narrow", tolerances.narrow().toString());
        fields.put("usual", tolerances.usual().toString());
        fields.put("wide", tolerances.wide().toString());
        fields.put(
                "own",
                tolerances.byMaterial().entrySet().stream()
                        .map(one ->
                                book.material(one.getKey()).map(Material::name).orElse(one.getKey()) + " = "
                                        + one.getValue())
                        .sorted()
                        .collect(Collectors.joining("\n")));
        return fields;
    }

    private static void change(Desk desk, Context request) {
        Input input = Input.of(request);
        Optional<Percent> narrow = percent(input, "narrow");
        Optional<Percent> usual = percent(input, "usual");
        Optional<Percent> wide = percent(input, "wide");
        Map<String, Percent> own = own(input, desk.ledger().materials().book());
        if (!input.isSound() || narrow.isEmpty() || usual.isEmpty() || wide.isEmpty()) {
            desk.pages().showAgain(request, TEMPLATE, new TolerancePage(frame(desk, request), input.typed()));
            return;
        }
        desk.ledger()
                .drawer("tolerances", Tolerances.class)
                .write(KEY, new Tolerances(narrow.get(), usual.get(), wide.get(), own));
        request.redirect(PATH + "?did=saved", HttpStatus.SEE_OTHER);
    }

    private static Optional<Percent> percent(Input input, String field) {
        Optional<Percent> typed =
                input.decimal(field, "A tolerance", "0.01", "50").map(Percent::new);
        return typed.isEmpty() && !input.hasProblem(field) ? input.refuse(field, "This tolerance is missing.") : typed;
    }

    /** A line for each material, by its name or key. */
    private static Map<String, Percent> own(Input input, MaterialBook book) {
        Map<String, Percent> own = new LinkedHashMap<>();
        for (String line : input.lines("own")) {
            int at = line.lastIndexOf('=');
            String name = at < 0 ? line : line.substring(0, at).strip();
            Optional<Material> card = book.materials().stream()
                    .filter(one ->
                            one.name().equalsIgnoreCase(name) || one.key().equals(name))
                    .findFirst();
            Optional<Percent> percent = Decimals.read(
                            at < 0
                                    ? ""
                                    : line.substring(at + 1).replace("%", "").strip())
                    .filter(figure -> figure.signum() > 0 && figure.intValue() <= 50)
                    .map(Percent::new);
            if (card.isEmpty()) {
                input.refuse("own", "No material is called \"" + name + "\".");
            } else if (percent.isEmpty()) {
                input.refuse("own", "\"" + line + "\" has no tolerance that can be read: type it like Glycerin = 3.");
            } else {
                own.put(card.get().key(), percent.get());
            }
        }
        return own;
    }
}
