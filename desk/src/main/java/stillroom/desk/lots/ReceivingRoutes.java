package stillroom.desk.lots;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.lots.LotPages.ReceivePage;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;

/** Booking a delivery. */
final class ReceivingRoutes {
    private final Desk desk;

    private ReceivingRoutes(Desk desk) {
        this.desk = desk;
    }

    static void add(RoutesConfig routes, Desk desk) {
        ReceivingRoutes receiving = new ReceivingRoutes(desk);
        routes.get("/materials/{key}/lots/new", receiving::ask);
        routes.post("/materials/{key}/lots/new", receiving::receive);
    }

    private Material material(Context request) {
        String key = request.pathParam("key");
        return desk.ledger()
                .materials()
                .book()
                .material(key)
                .orElseThrow(() -> new NotFoundResponse("There is no material \"" + key + "\" on the shelf."));
    }

    private void ask(Context request) {
        Material material = material(request);
        Typed proposed = new Typed(proposal(material), List.of());
        desk.pages().show(request, "lots/receive.jte", page(material, proposed));
    }

    private Map<String, String> proposal(Material material) {
        Map<String, String> fields = new HashMap<>();
        fields.put("code", LotCode.propose(material.name(), this::isTaken));
        fields.put("received-on", desk.today().toString());
        fields.put("supplier", material.supplier());
        return fields;
    }

    private boolean isTaken(String code) {
        return desk.ledger().lots().lot(code).isPresent();
    }

    private void receive(Context request) {
        Material material = material(request);
        Input input = Input.of(request);
        Optional<Lot> lot = new LotReader(input).delivery(material.key(), isWater(material), desk.today());
        if (lot.isPresent() && desk.ledger().lots().add(lot.get())) {
            request.redirect("/lots/" + lot.get().code() + "?did=added", HttpStatus.SEE_OTHER);
            return;
        }
        if (lot.isPresent()) {
            input.refuse(
                    "code",
                    "Another lot bears this code; " + LotCode.propose(material.name(), this::isTaken) + " is free.");
        }
        desk.pages().showAgain(request, "lots/receive.jte", page(material, input.typed()));
    }

    private ReceivePage page(Material material, Typed typed) {
        return new ReceivePage(
                desk.frame("New lot of " + material.name(), Section.SHELF),
                material,
                typed,
                isWater(material),
                desk.ledger().settings().read().currency());
    }

    private static boolean isWater(Material material) {
        return material.family() == Family.WATER;
    }
}
