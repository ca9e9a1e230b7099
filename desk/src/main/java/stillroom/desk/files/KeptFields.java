package stillroom.desk.files;

import java.util.List;
import stillroom.ledger.Ledger;
import stillroom.ledger.document.Drawer;
import stillroom.ledger.exchange.Kept;

/** What a newer version wrote into the file that a formula came from, by the version that it became. */
record KeptFields(List<Kept> fields) {
    KeptFields {
        fields = List.copyOf(fields);
    }

    private static Drawer<KeptFields> drawer(Ledger ledger) {
        return ledger.drawer("kept-of-formula-file", KeptFields.class);
    }

    static List<Kept> of(Ledger ledger, long product, int version) {
        return drawer(ledger)
                .read(product + "/" + version)
                .map(KeptFields::fields)
                .orElse(List.of());
    }

    static void write(Ledger ledger, long product, int version, List<Kept> fields) {
        if (!fields.isEmpty()) {
            drawer(ledger).write(product + "/" + version, new KeptFields(fields));
        }
    }
}
