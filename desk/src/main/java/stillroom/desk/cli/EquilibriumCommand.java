package stillroom.desk.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stillroom.formulary.constants.AcidConstantsFile;
import stillroom.science.equilibrium.EquilibriumSolver;
import stillroom.science.equilibrium.WaterModel;

/**
 * {@code ./stillroom equilibrium FILE}: one solution a line as JSON, one answer a line as JSON. The formats stand in
 * docs/commands.md.
 */
@Command(
        name = "equilibrium",
        mixinStandardHelpOptions = true,
        description = "Solves solutions of acids, bases and salts: one a line as JSON, one answer a line as JSON.")
public final class EquilibriumCommand implements Callable<Integer> {
    /** At least one line could not be read; the others were answered. */
    static final int SOME_UNREADABLE = 3;

    private static final ObjectMapper JSON = new ObjectMapper();

    @Parameters(paramLabel = "FILE", description = "A file, or - for standard input.")
    private String file = "-";

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        SolutionReader reader = new SolutionReader(AcidConstantsFile.shipped());
        EquilibriumSolver solver = new EquilibriumSolver(WaterModel.STANDARD);
        int status = 0;
        try (BufferedReader lines = open()) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (!line.isBlank() && !answer(line, reader, solver, out)) {
                    status = SOME_UNREADABLE;
                }
            }
        }
        out.flush();
        return status;
    }

    private BufferedReader open() throws IOException {
        return file.equals("-")
                ? new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))
                : Files.newBufferedReader(Path.of(file));
    }

    private static boolean answer(String line, SolutionReader reader, EquilibriumSolver solver, PrintWriter out)
            throws JsonProcessingException {
        try {
            JsonNode asked = JSON.readTree(line);
            ObjectNode answer = EquilibriumWriter.write(asked, solver.solve(reader.read(asked)));
            out.println(JSON.writeValueAsString(answer));
            return true;
        } catch (JsonProcessingException | IllegalArgumentException unreadable) {
            ObjectNode refusal = JSON.createObjectNode();
            refusal.put("error", sentence(unreadable));
            out.println(JSON.writeValueAsString(refusal));
            return false;
        }
    }

    private static String sentence(Exception unreadable) {
        return unreadable instanceof JsonProcessingException broken
                ? "this line is not JSON: " + broken.getOriginalMessage()
                : String.valueOf(unreadable.getMessage());
    }
}
