package stillroom.desk.lots;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.material.WaterLot;
import stillroom.ledger.document.Drawer;

/** What is known of a lot of water. */
public final class WaterRoutes {
    private static final String PATH = "/lots/{code}/water";

    private final Desk desk;

    private WaterRoutes(Desk desk) {
        this.desk = desk;
    }

    /** The page of one. */
    public record WaterPage(Frame frame, String code, Typed typed) {}

    static void add(RoutesConfig routes, Desk desk) {
        WaterRoutes water = new WaterRoutes(desk);
        routes.get(PATH, request -> water.show(request, water.fields(request)));
        routes.post(PATH, water::save);
    }

    static Drawer<WaterLot> drawer(Desk desk) {
        return desk.ledger().drawer("water-lot", WaterLot.class);
    }

    private String code(Context request) {
        String code = request.pathParam("code");
        return desk.ledger()
                .lots()
                .lot(code)
                .map(stocked -> stocked.lot().code())
                .orElseThrow(() -> new NotFoundResponse("There is no lot \"" + code + "\"."));
    }

    private Typed fields(Context request) {
        WaterLot water = drawer(desk).read(code(request)).orElse(WaterLot.UNKNOWN);
        Map<String, String> fields = new HashMap<>();
        fields.put("source", water.source());
        fields.put("count", water.count());
        fields.put("heat", water.heat());
        water.drawnOn().ifPresent(day -> fields.put("drawn-on", day.toString()));
        water.countedOn().ifPresent(day -> fields.put("counted-on", day.toString()));
        water.microsiemensPerCentimetre().ifPresent(value -> fields.put("conductivity", value.toString()));
        return new Typed(fields, List.of());
    }

    private void show(Context request, Typed typed) {
        String code = code(request);
        WaterPage page = new WaterPage(desk.frame(request, "Water lot " + code, Section.SHELF), code, typed);
        request.html(desk.pages().render("lots/water.jte", page));
    }

    private void save(Context request) {
        String code = code(request);
        Input input = Input.of(request);
        Optional<LocalDate> drawn = input.day("drawn-on", "The day");
        Optional<LocalDate> counted = input.day("counted-on", "The day");
        Optional<Double> conductivity = input.number("conductivity", "The conductivity", "0", "2000");
        if (!input.text("count").isEmpty() && counted.isEmpty()) {
            input.refuse("counted-on", "When was it counted?");
        }
        if (!input.isSound()) {
            request.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(request, input.typed());
            return;
        }
        drawer(desk)
                .write(
                        code,
                        new WaterLot(
                                input.text("source"),
                                drawn,
                                conductivity,
                                input.text("count"),
                                counted,
                                input.text("heat")));
        request.redirect("/lots/" + code + "?did=saved", HttpStatus.SEE_OTHER);
    }
}
