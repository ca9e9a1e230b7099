package stillroom.desk.workshop;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Markets;
import stillroom.ledger.workshop.Workshop;

/** The settings as form fields, and back. */
final class SettingsForm {
    private SettingsForm() {}

    static Map<String, String> fields(Workshop workshop) {
        Map<String, String> fields = new HashMap<>();
        fields.put("name", workshop.name());
        fields.put("responsible", workshop.responsiblePerson());
        fields.put("address", String.join("\n", workshop.addressLines()));
        fields.put("market", workshop.market());
        fields.put("currency", workshop.currency());
        fields.put("decimals", Integer.toString(workshop.decimalsShown()));
        return fields;
    }

    /** The settings as typed; empty where something is refused. */
    static Optional<Workshop> read(Input input, boolean demonstration) {
        String name = input.text("name");
        String responsible = input.text("responsible");
        List<String> address = input.lines("address");
        String market = input.text("market");
        if (!Markets.codes().contains(market)) {
            input.refuse("market", "Choose one of the markets.");
        }
        String currency = input.required("currency", "The currency").toUpperCase(Locale.ROOT);
        if (!currency.isEmpty() && !currency.matches("[A-Z]{3}")) {
            input.refuse("currency", "A currency has three letters, such as EUR, GBP or USD.");
        }
        Optional<Integer> decimals = input.whole("decimals", "Decimals", 0, 4);
        if (decimals.isEmpty() && !input.hasProblem("decimals")) {
            input.refuse("decimals", "How many decimals, 0 to 4?");
        }
        return input.isSound()
                ? Optional.of(
                        new Workshop(name, responsible, address, market, currency, decimals.orElse(2), demonstration))
                : Optional.empty();
    }
}
