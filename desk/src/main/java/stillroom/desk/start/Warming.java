package stillroom.desk.start;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine;
import stillroom.desk.cli.BlendCommand;

/** Runs the commands that compute once on something small, so that the class archive holds what they need. */
final class Warming {
    /** Two materials of three, one limit; asks for a linear programme and for whole decisions. */
    private static final String BLEND =
            "{\"materials\": [{\"name\": \"a\", \"cost\": 3, \"minIfUsed\": 0.1, \"properties\": {\"p\": 1}},"
                    + " {\"name\": \"b\", \"cost\": 1, \"minIfUsed\": 0.2, \"properties\": {\"p\": 3}},"
                    + " {\"name\": \"c\", \"cost\": 2, \"properties\": {\"p\": 2}}],"
                    + " \"limits\": [{\"property\": \"p\", \"max\": 2.2}], \"atMost\": 2}";

    private Warming() {}

    static void compute(Path folder) {
        try {
            Path blend = Files.writeString(folder.resolve("blend.json"), BLEND);
            run(new BlendCommand(), blend.toString());
        } catch (IOException cannotWrite) {
            throw new UncheckedIOException(cannotWrite);
        }
    }

    private static void run(Object command, String... arguments) {
        new CommandLine(command).setOut(new PrintWriter(Writer.nullWriter())).execute(arguments);
    }
}
