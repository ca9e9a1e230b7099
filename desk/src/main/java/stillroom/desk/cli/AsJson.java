package stillroom.desk.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Whether a command answers as JSON or in words; the same for all that open a workshop. */
final class AsJson {
    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    @Spec(Spec.Target.MIXEE)
    private @Nullable CommandSpec command;

    boolean asJson() {
        return json;
    }

    PrintWriter out() {
        return line().getOut();
    }

    /** For what concerns the person and is no answer. */
    PrintWriter err() {
        return line().getErr();
    }

    private CommandLine line() {
        if (command == null) {
            throw new IllegalStateException("asked before the command line was read");
        }
        return command.commandLine();
    }

    void say(ObjectNode answer, String words) {
        out().println(json ? answer.toString() : words);
        out().flush();
    }
}
