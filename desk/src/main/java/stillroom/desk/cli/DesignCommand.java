package stillroom.desk.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/**
 * {@code ./stillroom design FILE}: problems of mixture design as JSON, answered as JSON. The formats stand in
 * docs/commands.md.
 */
@Command(
        name = "design",
        mixinStandardHelpOptions = true,
        description = "Chooses which mixtures to try: a problem as JSON, or several, answered as JSON.")
public final class DesignCommand implements Callable<Integer> {
    @Mixin
    private OneInput input = new OneInput();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        CommandLine line = spec.commandLine();
        return new Designs().answer(input.file(), line.getOut(), line.getErr());
    }
}
