package stillroom.desk.packs;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import stillroom.desk.shell.Input;
import stillroom.formulary.pack.Pack;
import stillroom.formulary.pack.PackLot;

/** Reads containers and their lots from their forms. */
final class PackForm {
    private static final Pattern CODE = Pattern.compile("[\\p{L}\\p{N}._-]{1,40}");
    private static final int LONGEST_NAME = 60;
    private static final int MOST = 10_000_000;

    private PackForm() {}

    static Optional<Pack> pack(Input input, String name) {
        if (name.isEmpty() && !input.hasProblem("name")) {
            input.refuse("name", "The name is missing.");
        }
        if (name.length() > LONGEST_NAME || name.contains("/")) {
            input.refuse("name", "A name has up to " + LONGEST_NAME + " characters and no slash.");
        }
        var capacity = input.decimal("capacity", "The capacity", "0.1", "100000");
        var tare = input.grams("tare", "The empty weight");
        var deviation = input.grams("tare-deviation", "The scatter");
        var hot = input.number("hot", "The temperature", "-20", "150");
        return input.isSound()
                ? Optional.of(new Pack(
                        name,
                        input.text("material"),
                        input.text("liner"),
                        capacity,
                        tare,
                        deviation,
                        hot,
                        input.text("compatibility")))
                : Optional.empty();
    }

    static Map<String, String> fields(Pack pack) {
        Map<String, String> fields = new HashMap<>();
        fields.put("material", pack.material());
        fields.put("liner", pack.liner());
        fields.put("compatibility", pack.compatibility());
        pack.capacityMillilitres().ifPresent(ml -> fields.put("capacity", ml.toPlainString()));
        pack.tare().ifPresent(g -> fields.put("tare", g.toString()));
        pack.tareDeviation().ifPresent(g -> fields.put("tare-deviation", g.toString()));
        pack.hotFillCelsius().ifPresent(c -> fields.put("hot", Long.toString(Math.round(c))));
        return fields;
    }

    static Optional<PackLot> lot(Input input, Pack pack, LocalDate today) {
        String code = input.required("code", "The lot code");
        if (!code.isEmpty() && !CODE.matcher(code).matches()) {
            input.refuse("code", "A lot code has up to 40 letters, digits, hyphens, dots or underscores, no blanks.");
        }
        Optional<Integer> received = input.whole("received", "The number", 1, MOST);
        if (received.isEmpty() && !input.hasProblem("received")) {
            input.refuse("received", "How many came in?");
        }
        var each = input.money("each", "The price");
        LocalDate on = input.day("received-on", "The day of receipt").orElse(today);
        return input.isSound()
                ? received.map(count -> new PackLot(
                        code,
                        pack.name(),
                        input.text("supplier"),
                        input.text("supplier-lot"),
                        count,
                        on,
                        each,
                        input.has("held"),
                        input.text("note")))
                : Optional.empty();
    }
}
