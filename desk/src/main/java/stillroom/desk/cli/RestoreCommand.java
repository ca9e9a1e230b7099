package stillroom.desk.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import stillroom.ledger.Ledger;
import stillroom.ledger.store.Aside;

/** {@code ./stillroom restore FILE}: puts a copy in the place of a workshop, and keeps what stood there. */
@Command(
        name = "restore",
        mixinStandardHelpOptions = true,
        description = "Puts a copy in the place of a workshop that is not open. What stood there is kept beside it.")
public final class RestoreCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "FILE",
            description = "A copy, of this version of Stillroom or an older one; - for standard input.")
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private Path file;

    @Mixin
    private DataFolder data = new DataFolder();

    @Mixin
    private AsJson answer = new AsJson();

    @Override
    public Integer call() throws IOException {
        if (!file.toString().equals("-")) {
            return restore(file);
        }
        try (Aside aside = Aside.empty()) {
            Path copy = aside.folder().resolve("standard input");
            Files.copy(System.in, copy);
            return restore(copy);
        }
    }

    private int restore(Path copy) {
        Path home = data.path().toAbsolutePath().normalize();
        Path aside = Ledger.restore(copy, home);
        ObjectNode said = JsonNodeFactory.instance.objectNode();
        said.put("restored", home.toString());
        String words = "The workshop in " + home + " is the copy now.";
        if (!aside.equals(home)) {
            said.put("before", aside.toString());
            words += " What stood there before is " + aside;
        }
        answer.say(said, words);
        return 0;
    }
}
