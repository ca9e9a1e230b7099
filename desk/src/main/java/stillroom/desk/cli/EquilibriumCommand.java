package stillroom.desk.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/**
 * {@code ./stillroom equilibrium FILE}: one solution a line as JSON, one answer a line as JSON. The formats stand in
 * docs/commands.md.
 */
@Command(
        name = "equilibrium",
        mixinStandardHelpOptions = true,
        description = "Solves solutions of acids, bases and salts: one a line as JSON, one answer a line as JSON.")
public final class EquilibriumCommand implements Callable<Integer> {
    @Mixin
    private OneInput input = new OneInput();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        CommandLine line = spec.commandLine();
        return Answerings.equilibria().answer(input.file(), line.getOut(), line.getErr());
    }
}
