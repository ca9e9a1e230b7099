package stillroom.desk.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/**
 * {@code ./stillroom blend FILE}: blending problems as JSON, one answer a line as JSON. The formats stand in
 * docs/commands.md.
 */
@Command(
        name = "blend",
        mixinStandardHelpOptions = true,
        description =
                "Finds the best blend within limits, or says why there is none: problems as JSON or CSV, answers as JSON.")
public final class BlendCommand implements Callable<Integer> {
    @Mixin
    private OneInput input = new OneInput();

    @Option(
            names = "--materials",
            paramLabel = "CSV",
            description = "Materials: name, cost, max, min dose, properties.")
    private @Nullable Path materials;

    @Option(names = "--limits", paramLabel = "CSV", description = "Limits: property, min, max; with --materials.")
    private @Nullable Path limits;

    @Option(names = "--at-most", paramLabel = "N", description = "Use at most N materials, each above its min dose.")
    private @Nullable Integer atMost;

    @Option(
            names = "--seconds",
            paramLabel = "S",
            description = "Time limit of a problem that states none. Usually 60.")
    private double seconds = Blends.USUAL_SECONDS;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        CommandLine line = spec.commandLine();
        Blends blends = new Blends(seconds);
        if (materials == null && limits == null) {
            return blends.answer(input.file(), line.getOut(), line.getErr());
        }
        if (materials == null || limits == null) {
            throw new ParameterException(line, "--materials and --limits belong together");
        }
        return answerFiles(blends, materials, limits, line.getOut());
    }

    private int answerFiles(Blends blends, Path ofMaterials, Path ofLimits, PrintWriter out) throws IOException {
        try {
            return blends.answer(BlendCsv.problem(ofMaterials, ofLimits, atMost), out);
        } catch (IllegalArgumentException refused) {
            return blends.refuse(refused.getMessage(), out);
        }
    }
}
