package stillroom.desk.cli;

import java.io.Console;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stillroom.desk.imports.CardNames;
import stillroom.formulary.material.StarterLibrary;
import stillroom.ledger.Ledger;
import stillroom.ledger.imports.Opened;
import stillroom.ledger.imports.SpreadsheetFile;
import stillroom.ledger.store.LedgerException;

/** {@code ./stillroom import}: formulas and lists of materials out of spreadsheets. */
@Command(
        name = "import",
        mixinStandardHelpOptions = true,
        description = "Reads formulas and lists of materials out of XLSX and CSV files; stores them only with --yes.")
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

    @Option(names = "--json", description = "Answer as JSON, one file a line.")
    private boolean json;

    @Mixin
    private DataFolder data = new DataFolder();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        boolean store = !dryRun && (yes || agreed());
        if (!store && !dryRun) {
            spec.commandLine().getErr().println("Nothing is stored: say --yes to store.");
        }
        try (Workplace place = Workplace.open(data.path(), store)) {
            int status = 0;
            for (String file : files) {
                ImportAnswer answer = answer(file, place, store);
                out.println(json ? answer.json() : answer.text());
                status = answer.isClear() ? status : SOME_OPEN;
            }
            out.flush();
            return status;
        }
    }

    /** Asks only where a person sits before a terminal. */
    private boolean agreed() {
        Console console = System.console();
        if (console == null || json || files.contains("-")) {
            return false;
        }
        String said = console.readLine("Store what has no open question into %s? (yes/no) ", data.path());
        return said != null && said.strip().toLowerCase(java.util.Locale.ROOT).startsWith("y");
    }

    private ImportAnswer answer(String file, Workplace place, boolean store) throws IOException {
        String name = file.equals("-") ? "standard input" : SpreadsheetFile.shown(file);
        Opened opened = open(file);
        ImportAnswer read = ImportAnswer.of(name, opened, place.cards());
        Instant now = Instant.now();
        return store && place.ledger().isPresent()
                ? read.stored(place.ledger().get(), now, LocalDate.now(), doubtful)
                : read;
    }

    private static Opened open(String file) throws IOException {
        if (!file.equals("-")) {
            return SpreadsheetFile.open(Path.of(file));
        }
        InputStream in = System.in;
        return SpreadsheetFile.open("standard input", in);
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
