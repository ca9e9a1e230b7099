package stillroom.science.regression;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** Data that R was given and the figures that it answered, as they are kept in engines/fit; its README says how it was run. */
public final class StoredFits {
    private StoredFits() {}

    /** The rows of a table, without its headings. */
    public static List<List<Double>> rows(String file) throws IOException {
        return lines(file)
                .skip(1)
                .map(line -> Stream.of(line.split(",")).map(Double::valueOf).toList())
                .toList();
    }

    /** What R answered under a name. */
    public static List<Double> figures(String name) throws IOException {
        return lines("fits.txt")
                .filter(line -> line.startsWith(name + " "))
                .findFirst()
                .map(line -> Stream.of(line.substring(name.length()).trim().split(" +"))
                        .map(Double::valueOf)
                        .toList())
                .orElseThrow();
    }

    private static Stream<String> lines(String file) throws IOException {
        try (var in = StoredFits.class.getResourceAsStream("/engines/fit/" + file)) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8).lines();
        }
    }
}
