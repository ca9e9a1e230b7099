package stillroom.desk.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stillroom.desk.imports.CardNames;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.StarterLibrary;
import stillroom.ledger.Ledger;
import stillroom.ledger.export.WorkshopFile;
import stillroom.ledger.store.LedgerException;

/** {@code ./stillroom import}: formulas and lists of materials out of spreadsheets. */
@Command(
        name = "import",
        mixinStandardHelpOptions = true,
        description =
                "Reads formulas and lists of materials out of XLSX, CSV and formula files, or a whole workshop; stores only with --yes.")
public final class ImportCommand implements Callable<Integer> {
    /** Something could not be read, or has questions that only a person can answer. */
    private static final int SOME_OPEN = 3;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "XLSX or CSV files; - for standard input.")
    private List<String> files = new ArrayList<>();

    @Option(names = "--dry-run", description = "Say what was understood and store nothing.")
    private boolean dryRun;

    @Option(names = "--yes", description = "Store what has no open question, without asking.")
    private boolean yes;

    @Option(names = "--doubtful", description = "Store also what has open questions; they are written into the notes.")
    private boolean doubtful;

    @Mixin
    private DataFolder data = new DataFolder();

    @Mixin
    private AsJson answer = new AsJson();

    private final Function<String, Optional<String>> terminal;

    public ImportCommand() {
        this(ImportCommand::asked);
    }

    /** @param terminal puts a question to the person before it; empty where nobody sits there */
    ImportCommand(Function<String, Optional<String>> terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        if (files.size() == 1) {
            try (Incoming only = Incoming.open(files.get(0))) {
                return only.isWorkshop() ? whole(only) : each(List.of(only));
            }
        }
        List<Incoming> all = files.stream().map(Incoming::named).toList();
        return each(all);
    }

    private int each(List<Incoming> all) throws IOException {
        boolean store = !dryRun && (yes || agreed("Store what has no open question into"));
        if (!store && !dryRun) {
            answer.err().println("Nothing is stored: say --yes to store.");
        }
        PrintWriter out = answer.out();
        int status = 0;
        try (Workplace place = Workplace.open(data.path(), store)) {
            for (Incoming file : all) {
                status = answered(file, place, store, out) ? status : SOME_OPEN;
            }
        }
        out.flush();
        return status;
    }

    private boolean answered(Incoming named, Workplace place, boolean store, PrintWriter out) throws IOException {
        try (Incoming file = named.opened()) {
            if (file.isFormula()) {
                FormulaAnswer read = FormulaAnswer.of(file.shown(), file.bytes(), place.book(), place.ledger(), store);
                out.println(answer.asJson() ? read.json() : read.text());
                return read.isClear();
            }
            ImportAnswer read = sheets(file, place, store);
            out.println(answer.asJson() ? read.json() : read.text());
            return read.isClear();
        }
    }

    private ImportAnswer sheets(Incoming file, Workplace place, boolean store) throws IOException {
        ImportAnswer read = ImportAnswer.of(file.shown(), file.sheets(), place.cards());
        return store && place.ledger().isPresent()
                ? read.stored(place.ledger().get(), Instant.now(), LocalDate.now(), doubtful)
                : read;
    }

    private int whole(Incoming file) throws IOException {
        PrintWriter out = answer.out();
        if (dryRun || !(yes || agreed("Import the whole workshop into"))) {
            out.println(
                    answer.asJson()
                            ? "{\"workshop\":true,\"stored\":false}"
                            : file.shown() + " holds a whole workshop. Say --yes to import it.");
            return 0;
        }
        WorkshopFile.read(file.stream(), data.path());
        out.println(
                answer.asJson() ? "{\"workshop\":true,\"stored\":true}" : "The workshop is in " + data.path() + ".");
        return 0;
    }

    /** Asks only where a person sits before a terminal, and answers are for reading. */
    private boolean agreed(String what) {
        return !answer.asJson()
                && !files.contains("-")
                && terminal.apply(what + " " + data.path() + "? (yes/no) ")
                        .filter(said -> said.strip().toLowerCase(Locale.ROOT).startsWith("y"))
                        .isPresent();
    }

    private static Optional<String> asked(String question) {
        return Optional.ofNullable(System.console()).flatMap(at -> Optional.ofNullable(at.readLine("%s", question)));
    }

    /** The workshop, or only the library where none is there or it is open elsewhere and nothing is to be stored. */
    private record Workplace(Optional<Ledger> ledger, CardNames names) implements AutoCloseable {
        static Workplace open(Path folder, boolean store) {
            if (!store && !Ledger.existsIn(folder)) {
                return library();
            }
            try {
                Ledger ledger = Ledger.open(folder);
                return new Workplace(Optional.of(ledger), CardNames.of(ledger));
            } catch (LedgerException inUse) {
                if (store) {
                    throw inUse;
                }
                return library();
            }
        }

        private static Workplace library() {
            return new Workplace(Optional.empty(), CardNames.of(StarterLibrary.load()));
        }

        /** The cards as they are now. */
        MaterialBook book() {
            return ledger.map(one -> one.materials().book()).orElseGet(StarterLibrary::load);
        }

        /** As of now: cards that a file before this one made are among them. */
        CardNames cards() {
            return ledger.map(CardNames::of).orElse(names);
        }

        @Override
        public void close() {
            ledger.ifPresent(Ledger::close);
        }
    }
}
