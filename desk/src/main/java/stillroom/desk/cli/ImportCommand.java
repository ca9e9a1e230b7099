package stillroom.desk.cli;

import java.io.Console;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stillroom.desk.files.FormulaIn;
import stillroom.desk.imports.CardNames;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.StarterLibrary;
import stillroom.ledger.Ledger;
import stillroom.ledger.export.WorkshopFile;
import stillroom.ledger.imports.Opened;
import stillroom.ledger.imports.SpreadsheetFile;
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

    /** One byte more than a formula file may have, so that the reader sees that it is too large. */
    private static final int LARGEST_FORMULA = 2_000_001;

    private static final Pattern WORKSHOP = Pattern.compile("^\\uFEFF?\\s*\\{\\s*\"stillroom\"\\s*:\\s*\"workshop\"");

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
        Optional<Path> workshop = workshopFile();
        if (workshop.isPresent()) {
            return whole(workshop.get(), out);
        }
        boolean store = !dryRun && (yes || agreed());
        if (!store && !dryRun) {
            spec.commandLine().getErr().println("Nothing is stored: say --yes to store.");
        }
        try (Workplace place = Workplace.open(data.path(), store)) {
            int status = 0;
            for (String file : files) {
                Optional<byte[]> formula = formulaFile(file);
                if (formula.isPresent()) {
                    FormulaAnswer answer = FormulaAnswer.of(file, formula.get(), place.book(), place.ledger(), store);
                    out.println(json ? answer.json() : answer.text());
                    status = answer.isClear() ? status : SOME_OPEN;
                    continue;
                }
                ImportAnswer answer = answer(file, place, store);
                out.println(json ? answer.json() : answer.text());
                status = answer.isClear() ? status : SOME_OPEN;
            }
            out.flush();
            return status;
        }
    }

    /** A formula file, by its first character and not by its name. */
    private static Optional<byte[]> formulaFile(String file) throws IOException {
        if (file.equals("-") || !Files.isRegularFile(Path.of(file))) {
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(Path.of(file))) {
            if (!FormulaIn.looksLikeOne(in.readNBytes(64))) {
                return Optional.empty();
            }
        }
        try (InputStream in = Files.newInputStream(Path.of(file))) {
            return Optional.of(in.readNBytes(LARGEST_FORMULA));
        }
    }

    /** A whole workshop that was exported; it comes alone. */
    private Optional<Path> workshopFile() throws IOException {
        if (files.size() != 1 || files.get(0).equals("-") || !Files.isRegularFile(Path.of(files.get(0)))) {
            return Optional.empty();
        }
        Path file = Path.of(files.get(0));
        try (InputStream in = Files.newInputStream(file)) {
            String head = new String(in.readNBytes(200), StandardCharsets.UTF_8);
            return WORKSHOP.matcher(head).find() ? Optional.of(file) : Optional.empty();
        }
    }

    private int whole(Path file, PrintWriter out) throws IOException {
        if (dryRun || !(yes || agreed())) {
            out.println(
                    json
                            ? "{\"workshop\":true,\"stored\":false}"
                            : file + " holds a whole workshop. Say --yes to import it.");
            return 0;
        }
        try (InputStream in = Files.newInputStream(file)) {
            WorkshopFile.read(in, data.path());
        }
        out.println(json ? "{\"workshop\":true,\"stored\":true}" : "The workshop is in " + data.path() + ".");
        return 0;
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
