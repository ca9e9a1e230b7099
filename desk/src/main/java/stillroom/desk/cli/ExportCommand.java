package stillroom.desk.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stillroom.ledger.Ledger;
import stillroom.ledger.export.WorkshopFile;
import stillroom.ledger.store.LedgerException;

/** {@code ./stillroom export}: everything as one JSON file, or as CSV tables. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        description = "Writes everything as one JSON file, or as CSV tables; the workshop may be in use meanwhile.")
public final class ExportCommand implements Callable<Integer> {
    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = "A file that does not exist yet, or - for standard output (usual). With --csv a folder.")
    private @Nullable Path target;

    @Option(names = "--csv", description = "CSV tables, one file each, into the folder FILE.")
    private boolean csv;

    @Option(names = "--json", description = "Say what was written as JSON.")
    private boolean json;

    @Mixin
    private DataFolder data = new DataFolder();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (csv) {
            tables();
        } else if (target == null || target.toString().equals("-")) {
            // What is written is UTF-8 bytes, so it goes past the writer of the command line.
            WorkshopFile.write(data.path(), System.out);
        } else {
            file(target);
        }
        return 0;
    }

    private void file(Path file) throws IOException {
        if (Files.exists(file)) {
            throw new LedgerException("The file " + file + " exists already; an export overwrites nothing.");
        }
        Path part = file.resolveSibling(file.getFileName() + ".part");
        try {
            try (OutputStream out = Files.newOutputStream(part)) {
                WorkshopFile.write(data.path(), out);
            }
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(part);
        }
        say(List.of(file));
    }

    private void tables() throws IOException {
        if (target == null) {
            throw new LedgerException("Name the folder into which the tables go.");
        }
        if (!Ledger.existsIn(data.path())) {
            throw new LedgerException("The folder " + data.path() + " holds no workshop.");
        }
        say(Ledger.exportTables(data.path(), target));
    }

    private void say(List<Path> written) {
        ObjectNode answer = JsonNodeFactory.instance.objectNode();
        var names = answer.putArray("written");
        written.forEach(path -> names.add(path.toAbsolutePath().normalize().toString()));
        spec.commandLine()
                .getOut()
                .println(
                        json
                                ? answer.toString()
                                : "Written: "
                                        + String.join(
                                                ", ",
                                                written.stream()
                                                        .map(Path::toString)
                                                        .toList()));
    }
}
