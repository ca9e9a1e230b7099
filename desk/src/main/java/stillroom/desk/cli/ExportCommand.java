package stillroom.desk.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stillroom.ledger.Ledger;
import stillroom.ledger.export.WorkshopFile;
import stillroom.ledger.store.LedgerException;

/** {@code ./stillroom export}: everything as one JSON file, or as CSV tables. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        description =
                "Writes everything as one JSON file or as CSV tables, or formulas as files; the workshop may be in use meanwhile.")
public final class ExportCommand implements Callable<Integer> {
    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description =
                    "A file that does not exist yet, or - for standard output (usual). With --csv or --formulas a folder.")
    private @Nullable Path target;

    @Option(names = "--csv", description = "CSV tables, one file each, into the folder FILE.")
    private boolean csv;

    @Option(
            names = "--formula",
            paramLabel = "PRODUCT",
            description = "Only the newest formula of this product, by its number or name, as a formula file.")
    private @Nullable String formula;

    @Option(
            names = "--formulas",
            description = "The newest formula of every product, one file each, into the folder FILE, over those there.")
    private boolean formulas;

    @Mixin
    private DataFolder data = new DataFolder();

    @Mixin
    private AsJson answer = new AsJson();

    @Override
    public Integer call() throws IOException {
        if ((csv ? 1 : 0) + (formulas ? 1 : 0) + (formula == null ? 0 : 1) > 1) {
            throw new LedgerException("Choose one of --csv, --formula and --formulas.");
        }
        if (csv) {
            say(Ledger.exportTables(folder(), named("the tables go")));
        } else if (formulas) {
            say(FormulaFiles.all(folder(), named("the formulas go")));
        } else if (formula != null) {
            String text = FormulaFiles.one(folder(), formula);
            write(out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
        } else {
            write(out -> WorkshopFile.write(data.path(), out));
        }
        return 0;
    }

    /** What is written to a file or to standard output. */
    private interface Writing {
        void into(OutputStream out) throws IOException;
    }

    private void write(Writing writing) throws IOException {
        if (target == null || target.toString().equals("-")) {
            // What is written is UTF-8 bytes, so it goes past the writer of the command line.
            writing.into(System.out);
            System.out.flush();
            return;
        }
        if (Files.exists(target)) {
            throw new LedgerException("The file " + target + " exists already; an export overwrites nothing.");
        }
        Path part = target.resolveSibling(target.getFileName() + ".part");
        try {
            try (OutputStream out = Files.newOutputStream(part)) {
                writing.into(out);
            }
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(part);
        }
        say(List.of(target));
    }

    private Path named(String what) {
        if (target == null) {
            throw new LedgerException("Name the folder into which " + what + ".");
        }
        return target;
    }

    private Path folder() {
        if (!Ledger.existsIn(data.path())) {
            throw new LedgerException("The folder " + data.path() + " holds no workshop.");
        }
        return data.path();
    }

    private void say(List<Path> written) {
        ObjectNode said = JsonNodeFactory.instance.objectNode();
        ArrayNode names = said.putArray("written");
        written.forEach(path -> names.add(path.toAbsolutePath().normalize().toString()));
        String words = written.stream().map(Path::toString).collect(Collectors.joining(", "));
        answer.say(said, written.isEmpty() ? "There is nothing to write." : "Written: " + words);
    }
}
