package stillroom.desk.files;

import java.util.List;
import java.util.Optional;
import stillroom.ledger.Ledger;
import stillroom.ledger.document.Drawer;
import stillroom.ledger.exchange.FormulaFile;
import stillroom.ledger.exchange.FormulaFile.Made;
import stillroom.ledger.exchange.Kept;

/**
 * What stood in the file that a formula came from and has no place in the workshop, by the version that it became.
 *
 * @param fields what a newer version wrote
 * @param made what the file knew of a batch
 */
record KeptFields(List<Kept> fields, Optional<Made> made) {
    private static final KeptFields NONE = new KeptFields(List.of(), Optional.empty());

    KeptFields {
        fields = List.copyOf(fields);
    }

    private static Drawer<KeptFields> drawer(Ledger ledger) {
        return ledger.drawer("kept-of-formula-file", KeptFields.class);
    }

    /** Of this version, or of the newest before it that has some: what was edited here still carries what came along. */
    static KeptFields of(Ledger ledger, long product, int version) {
        for (int number = version; number > 0; number--) {
            Optional<KeptFields> kept = drawer(ledger).read(product + "/" + number);
            if (kept.isPresent()) {
                return number == version
                        ? kept.get()
                        : new KeptFields(kept.get().fields(), Optional.empty());
            }
        }
        return NONE;
    }

    static void write(Ledger ledger, long product, int version, FormulaFile file) {
        KeptFields kept = new KeptFields(file.kept(), file.made());
        if (!kept.equals(NONE)) {
            drawer(ledger).write(product + "/" + version, kept);
        }
    }
}
