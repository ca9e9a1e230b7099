package stillroom.desk.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stillroom.ledger.Ledger;
import stillroom.ledger.backup.Backups;

/** {@code ./stillroom backup [FILE]}: a consistent copy of the workshop, which may be in use meanwhile. */
@Command(
        name = "backup",
        mixinStandardHelpOptions = true,
        description = "Writes a consistent copy of the workshop to a new file; the workshop may be in use meanwhile.")
public final class BackupCommand implements Callable<Integer> {
    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = "A file that does not exist yet. Usually a dated one in the folder for copies.")
    private @Nullable Path file;

    @Mixin
    private DataFolder data = new DataFolder();

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        Path written = written().toAbsolutePath().normalize();
        ObjectNode answer = JsonNodeFactory.instance.objectNode();
        answer.put("written", written.toString());
        answer.put("bytes", written.toFile().length());
        spec.commandLine().getOut().println(json ? answer.toString() : "The copy is " + written);
        return 0;
    }

    private Path written() {
        if (file == null) {
            return new Backups(data.path()).write(LocalDateTime.now()).file();
        }
        Ledger.backup(data.path(), file);
        return file;
    }
}
