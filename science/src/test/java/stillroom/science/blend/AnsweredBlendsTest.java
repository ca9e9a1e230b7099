package stillroom.science.blend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillroom.science.bench.Checksum;
import stillroom.science.bench.LpFile;
import stillroom.science.blend.GeneratedBlend.Shape;

/**
 * Blends of 20 to 400 materials, of six shapes, that GLPK 5.0 and CBC 2.10.8 have answered: {@code glpsol --lp FILE --mipgap 1e-9
 * -w OUT} and {@code cbc FILE ratio 1e-9 allow 1e-10 solve solu OUT}, as {@code science/compare-blends.sh} calls them (10 1 20
 * all, and 20 101 112 USUAL 24). All are proven by GLPK, and by CBC but for one that it had not done in 50 seconds. The problems are
 * generated again here; a checksum of the file that the two were given tells that they are still the same.
 */
class AnsweredBlendsTest {
    private record Answered(
            Shape shape,
            long seed,
            int materials,
            int limits,
            int atMost,
            double glpk,
            OptionalDouble cbc,
            List<Integer> used,
            String checksum) {
        static Answered of(String line) {
            String[] cells = line.split(",", -1);
            return new Answered(
                    Shape.valueOf(cells[0]),
                    Long.parseLong(cells[1]),
                    Integer.parseInt(cells[2]),
                    Integer.parseInt(cells[3]),
                    cells[4].isEmpty() ? 0 : Integer.parseInt(cells[4]),
                    Double.parseDouble(cells[5]),
                    cells[6].isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(cells[6])),
                    Stream.of(cells[7].split(" ")).map(Integer::valueOf).toList(),
                    cells[8]);
        }

        Blend blend() {
            return atMost == 0
                    ? GeneratedBlend.linear(shape, seed, materials, limits)
                    : GeneratedBlend.counted(shape, seed, materials, limits, atMost);
        }

        /** Where many materials are alike, many blends are best. */
        boolean isTheOnlyBest() {
            return shape != Shape.COARSE && shape != Shape.TWINS;
        }
    }

    static Stream<Answered> answered() throws IOException {
        try (InputStream in = AnsweredBlendsTest.class.getResourceAsStream("/engines/blend/answered.csv")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines().skip(1).map(Answered::of).toList().stream();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("answered")
    void asGlpkAndCbc(Answered answered) {
        Blend blend = answered.blend();
        assertThat(Checksum.of(LpFile.of(blend))).isEqualTo(answered.checksum());
        BlendAnswer.Optimal answer = (BlendAnswer.Optimal) BlendSolver.solve(blend, Patience.ENDLESS);
        double size = Math.max(1, Math.abs(answer.objective()));
        assertThat(answer.objective()).isCloseTo(answered.glpk(), within(2e-9 * size));
        answered.cbc().ifPresent(cbc -> assertThat(answer.objective()).isCloseTo(cbc, within(1e-8 * size)));
        assertThat(answer.objective() - answer.bound()).isBetween(0.0, 1e-9 * size);
        BlendEngineTest.assertKept(blend, answer.best());
        if (answered.isTheOnlyBest()) {
            assertThat(used(answer.best())).isEqualTo(answered.used());
        }
    }

    private static List<Integer> used(Mix mix) {
        return IntStream.rangeClosed(1, mix.fractions().size())
                .filter(j -> mix.fractions().get(j - 1) > 1e-7)
                .boxed()
                .toList();
    }
}
