package stillroom.desk.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import stillroom.ledger.Ledger;
import stillroom.ledger.backup.Backups;
import stillroom.ledger.store.Aside;

/** {@code ./stillroom backup [FILE]}: a consistent copy of the workshop, which may be in use meanwhile. */
@Command(
        name = "backup",
        mixinStandardHelpOptions = true,
        description = "Writes a consistent copy of the workshop to a new file; the workshop may be in use meanwhile.")
public final class BackupCommand implements Callable<Integer> {
    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description =
                    "A file that does not exist yet, or - for standard output. Usually a dated one in the folder for copies.")
    private @Nullable Path file;

    @Mixin
    private DataFolder data = new DataFolder();

    @Mixin
    private AsJson answer = new AsJson();

    @Override
    public Integer call() throws IOException {
        if (file != null && file.toString().equals("-")) {
            try (Aside aside = Aside.copyOf(data.path())) {
                Files.copy(aside.file(), System.out);
            }
            return 0;
        }
        Path written = written().toAbsolutePath().normalize();
        ObjectNode said = JsonNodeFactory.instance.objectNode();
        said.put("written", written.toString());
        said.put("bytes", Files.size(written));
        answer.say(said, "The copy is " + written);
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
