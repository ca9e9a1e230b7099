package stillroom.desk.cli.formula;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.rule.RuleBook;
import stillroom.ledger.Ledger;
import stillroom.ledger.exchange.Catalogue;
import stillroom.ledger.store.Aside;

/** Where a command looks materials up: the starter library, or the shelf of a workshop, which may be in use meanwhile. */
record Library(Catalogue catalogue, Runnable closing) implements AutoCloseable {
    /** @param data folder of a workshop; null for the starter library alone */
    static Library open(@Nullable Path data, MaterialBook starter, RuleBook rules) {
        return data == null ? new Library(Catalogue.of(starter, rules), () -> {}) : ofWorkshop(data, starter, rules);
    }

    /** Reads a copy, so that a workshop in use is neither disturbed nor locked. */
    private static Library ofWorkshop(Path data, MaterialBook starter, RuleBook rules) {
        Aside copy = Aside.copyOf(data);
        try {
            Ledger ledger = Ledger.open(copy.folder(), () -> starter);
            return new Library(Catalogue.of(ledger.materials().book(), rules), () -> {
                ledger.close();
                copy.close();
            });
        } catch (RuntimeException trouble) {
            copy.close();
            throw trouble;
        }
    }

    @Override
    public void close() {
        closing.run();
    }
}
