package stillroom.ledger.imports;

import java.util.HashMap;
import java.util.Map;
import stillroom.ledger.document.Drawer;
import stillroom.ledger.store.Database;

/** Which card the maker once meant by a name in a sheet. Offered again, never used without being shown. */
public final class NameChoices {
    private final Drawer<NameChoice> drawer;

    public NameChoices(Database database) {
        this.drawer = new Drawer<>(database, "import-name", NameChoice.class);
    }

    /** All of them: the key of a card by the name in its compared form; an empty key where no card is meant. */
    public Map<String, String> all() {
        Map<String, String> choices = new HashMap<>();
        drawer.all().forEach((name, choice) -> choices.put(name, choice.materialKey()));
        return choices;
    }

    /** The latest decision counts. */
    public void remember(String name, String materialKey) {
        drawer.write(name, new NameChoice(materialKey));
    }
}
