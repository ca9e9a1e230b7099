package stillroom.science.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Against the same model in 40-digit arithmetic and another language: src/test/engines/davies.py made the file. */
class DaviesEngineTest {

    @Test
    void agreesWithFortyDigits() throws IOException {
        List<String> lines = lines();
        assertThat(lines).hasSizeGreaterThan(30);
        for (String line : lines) {
            String[] fields = line.split(";", -1);
            Equilibrium answer = Acids.SOLVER.solve(solution(fields));
            assertThat(answer.pH()).as(line).isCloseTo(Double.parseDouble(fields[3]), within(1e-9));
            assertThat(answer.ionicStrengthMolPerKg()).as(line).isCloseTo(Double.parseDouble(fields[4]), within(1e-11));
        }
    }

    private static List<String> lines() throws IOException {
        var in = Objects.requireNonNull(DaviesEngineTest.class.getResourceAsStream("/engines/davies.csv"));
        try (var reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return reader.lines().skip(1).toList();
        }
    }

    private static Solution solution(String[] fields) {
        List<Component> components = new ArrayList<>();
        for (String text : parts(fields[1])) {
            String[] figures = text.split(" ");
            List<Dissociation> steps = new ArrayList<>();
            for (String step : figures[1].split(",")) {
                String[] s = step.split("/");
                steps.add(
                        new Dissociation(Double.parseDouble(s[0]), Double.parseDouble(s[1]), Double.parseDouble(s[2])));
            }
            AcidBase system = new AcidBase("x" + components.size(), Integer.parseInt(figures[0]), steps);
            components.add(new Component(system, Double.parseDouble(figures[2])));
        }
        List<StrongIon> ions = new ArrayList<>();
        for (String text : parts(fields[2])) {
            String[] figures = text.split(" ");
            ions.add(new StrongIon("ion" + ions.size(), Integer.parseInt(figures[0]), Double.parseDouble(figures[1])));
        }
        return new Solution(components, ions, Double.parseDouble(fields[0]), Optional.empty());
    }

    private static List<String> parts(String field) {
        return field.isEmpty() ? List.of() : List.of(field.split("\\|"));
    }
}
