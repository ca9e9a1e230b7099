package stillroom.desk.cli.formula;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.OtherNames;
import stillroom.formulary.rule.RuleBook;
import stillroom.ledger.Ledger;
import stillroom.ledger.exchange.Catalogue;
import stillroom.ledger.store.LedgerException;

/** Where a command looks materials up: the starter library, or the shelf of a workshop, which may be in use meanwhile. */
record Library(Catalogue catalogue, Runnable closing) implements AutoCloseable {
    private static final String FILE = "stillroom.db";

    /** @param data folder of a workshop; null for the starter library alone */
    static Library open(@Nullable Path data, MaterialBook starter, RuleBook rules) {
        return data == null
                ? new Library(new Catalogue(starter, otherNames(rules)), () -> {})
                : ofWorkshop(data, starter, rules);
    }

    /** Reads a copy, so that a workshop in use is neither disturbed nor locked. */
    private static Library ofWorkshop(Path data, MaterialBook starter, RuleBook rules) {
        Path copy;
        try {
            copy = Files.createTempDirectory("stillroom-shelf");
        } catch (IOException trouble) {
            throw new LedgerException("The temporary folder cannot be written.", trouble);
        }
        Optional<Ledger> opened = Optional.empty();
        try {
            Ledger.backup(data, copy.resolve(FILE));
            Ledger ledger = Ledger.open(copy, () -> starter);
            opened = Optional.of(ledger);
            return new Library(new Catalogue(ledger.materials().book(), otherNames(rules)), () -> {
                ledger.close();
                remove(copy);
            });
        } catch (RuntimeException trouble) {
            opened.ifPresent(Ledger::close);
            remove(copy);
            throw trouble;
        }
    }

    /** INCI name by a common name, or by the market's own name. */
    private static Map<String, String> otherNames(RuleBook rules) {
        Map<String, String> inciByName = new HashMap<>(OtherNames.load());
        rules.names().values().forEach(names -> names.forEach((inci, name) -> inciByName.putIfAbsent(name, inci)));
        return inciByName;
    }

    private static void remove(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(one);
            }
        } catch (IOException left) {
            // A copy in the temporary folder is left to the system.
        }
    }

    @Override
    public void close() {
        closing.run();
    }
}
