package stillroom.desk.start;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stillroom.desk.cli.Answerings;

/** Runs the commands that compute once on something small, so that the class archive holds what they need. */
final class Warming {
    private static final Map<String, String> PROBLEMS = Map.of(
            "blend",
            blend(30, 4) + blend(30, 1) + blend(120, 0),
            "design",
            "{\"q\": 3, \"n\": 10, \"effort\": 0.1} {\"q\": 4, \"n\": 12, \"upper\": [0.5, 1, 1, 1], \"effort\": 0.1}",
            "dose",
            "{\"targetPh\": 5.0, \"halfBand\": 0.2, \"bulkGrams\": 950, \"pour\": \"acid\", \"repeatability\": 0.02, \"balanceStepGrams\": 0.01,"
                    + " \"liquid\": {\"waterMassFraction\": 0.995, \"celsius\": 25, \"components\": [{\"name\": \"benzoic-acid\", \"molPerKg\": 0.03}]},"
                    + " \"correctors\": {\"acid\": {\"waterMassFraction\": 0.5, \"components\": [{\"name\": \"citric-acid\", \"molPerKg\": 2.6}]},"
                    + " \"thin\": {\"dilutionOf\": \"acid\", \"massFraction\": 0.05}},"
                    + " \"readings\": [{\"vessel\": \"sample\", \"grams\": 50, \"additions\": {}, \"pH\": 8.3},"
                    + " {\"vessel\": \"sample\", \"grams\": 50, \"additions\": {\"thin\": 0.5}, \"pH\": 5.23}]}",
            "equilibrium",
            "{\"celsius\": 25, \"components\": [{\"name\": \"citric-acid\", \"molPerKg\": 0.05},"
                    + " {\"name\": \"sodium-hydroxide\", \"molPerKg\": 0.04}]}");

    private Warming() {}

    /**
     * @param atMost materials that may be used; 0 where any number may. With 1 the blend is impossible, which takes yet other
     *     classes to explain.
     */
    private static String blend(int size, int atMost) {
        String materials = IntStream.range(0, size)
                .mapToObj(j -> "{\"name\": \"m" + j + "\", \"cost\": " + (1 + 7 * j % 11)
                        + ", \"max\": 0.4, \"minIfUsed\": 0.02," + " \"properties\": {\"p\": " + 5 * j % 13
                        + ", \"q\": " + 3 * j % 17 + "}}")
                .collect(Collectors.joining(", "));
        return "{\"materials\": [" + materials
                + "], \"limits\": [{\"property\": \"p\", \"max\": 6.5, \"min\": 5}, {\"property\": \"q\", \"min\": 9}]"
                + (atMost > 0 ? ", \"atMost\": " + atMost : "") + "}\n";
    }

    static void compute() {
        PROBLEMS.forEach(Warming::answer);
    }

    private static void answer(String command, String problems) {
        PrintWriter nobody = new PrintWriter(Writer.nullWriter());
        try {
            Answerings.named(command)
                    .orElseThrow()
                    .answer(new ByteArrayInputStream(problems.getBytes(StandardCharsets.UTF_8)), nobody, nobody);
        } catch (IOException cannotRead) {
            throw new UncheckedIOException(cannotRead);
        }
    }
}
