package stillroom.desk.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stillroom.ledger.Ledger;

/** {@code ./stillroom restore FILE}: puts a copy in the place of a workshop, and keeps what stood there. */
@Command(
        name = "restore",
        mixinStandardHelpOptions = true,
        description = "Puts a copy in the place of a workshop that is not open. What stood there is kept beside it.")
public final class RestoreCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "A copy, of this version of Stillroom or an older one.")
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private Path file;

    @Mixin
    private DataFolder data = new DataFolder();

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        Path home = data.path().toAbsolutePath().normalize();
        Path aside = Ledger.restore(file, home);
        ObjectNode answer = JsonNodeFactory.instance.objectNode();
        answer.put("restored", home.toString());
        String words = "The workshop in " + home + " is the copy now.";
        if (!aside.equals(home)) {
            answer.put("before", aside.toString());
            words += " What stood there before is " + aside;
        }
        spec.commandLine().getOut().println(json ? answer.toString() : words);
        return 0;
    }
}
