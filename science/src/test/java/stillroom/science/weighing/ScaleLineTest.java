package stillroom.science.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Lines as balances send them, in invented shapes, and what else comes over a wire. */
class ScaleLineTest {
    private static final ScaleLine USUAL = ScaleLine.of(ScaleLine.USUAL, "").orElseThrow();

    private static Optional<BigDecimal> grams(ScaleLine line, String text) {
        return line.read(text).map(ScaleLine.Reading::grams);
    }

    @Test
    void aFigureWithItsUnitIsRead() {
        assertThat(grams(USUAL, "   12.34 g")).contains(new BigDecimal("12.34"));
        assertThat(grams(USUAL, "N + 0001.20 g\r")).contains(new BigDecimal("1.20"));
        assertThat(grams(USUAL, "- 3,5 g")).contains(new BigDecimal("-3.5"));
        assertThat(grams(USUAL, "1.234 kg")).contains(new BigDecimal("1234"));
        assertThat(grams(USUAL, "250 mg")).contains(new BigDecimal("0.250"));
    }

    @Test
    void linesThatStopMidNumberOrSayAnotherThingAreNotRead() {
        for (String line : List.of(
                "",
                "12",
                "12.",
                "12.3",
                "1",
                "g",
                "ERR",
                "12.34 g 5",
                "12 34 g",
                "1e3 g",
                "NaN g",
                "12.34 oz",
                "--5 g",
                "+-5 g",
                "1.2.3 g")) {
            assertThat(USUAL.read(line)).as(line).isEmpty();
        }
        assertThat(USUAL.read("9".repeat(7) + " kg"))
                .as("a million kilograms is no balance")
                .isEmpty();
    }

    @Test
    void aMovingWeightIsSaidToMove() {
        ScaleLine marked = ScaleLine.of("(?:ST|US), *(?<value>[+-]?[0-9.]+) *(?<unit>g)", "US")
                .orElseThrow();
        assertThat(marked.read("US,+ 1.0 g")).isEmpty();
        assertThat(marked.read("US,+1.0 g").orElseThrow().stable()).isFalse();
        assertThat(marked.read("ST,+1.0 g").orElseThrow().stable()).isTrue();
        ScaleLine withoutUnit = ScaleLine.of("(?<value>[0-9.]+)", "").orElseThrow();
        assertThat(grams(withoutUnit, "17.5")).contains(new BigDecimal("17.5"));
    }

    @Test
    void aPatternThatCannotBeReadIsNoPattern() {
        assertThat(ScaleLine.of("(?<value>[0-9", "")).isEmpty();
        assertThat(ScaleLine.of("[0-9]+", "")).isEmpty();
        // A group that matches what is no figure gives nothing.
        assertThat(ScaleLine.of("(?<value>.*)", "").orElseThrow().read("rubbish"))
                .isEmpty();
        assertThat(ScaleLine.of("x(?<value>[0-9]+)?", "").orElseThrow().read("x"))
                .isEmpty();
    }

    @Test
    void rubbishNeverThrowsAndNeverBecomesAWeight() {
        Random random = new Random(5);
        String letters = "0123456789.,+- gkmSTU\u0000\u0007\u00ff\t;:";
        int read = 0;
        for (int run = 0; run < 100_000; run++) {
            StringBuilder line = new StringBuilder();
            int length = random.nextInt(24);
            for (int i = 0; i < length; i++) {
                line.append(letters.charAt(random.nextInt(letters.length())));
            }
            Optional<ScaleLine.Reading> reading = USUAL.read(line.toString());
            if (reading.isPresent()) {
                read++;
                assertThat(line.toString().strip()).endsWith("g");
                assertThat(reading.get().grams().abs()).isLessThanOrEqualTo(BigDecimal.valueOf(1_000_000));
            }
        }
        assertThat(read).as("some by chance are weights").isBetween(10, 50_000);
    }

    @Test
    void whateverThePiecesTheLinesAreTheSame() {
        Random random = new Random(6);
        for (int run = 0; run < 2000; run++) {
            List<String> sent = new ArrayList<>();
            StringBuilder stream = new StringBuilder();
            for (int i = 0; i < 1 + random.nextInt(8); i++) {
                String line = random.nextInt(5000) / 100.0 + " g";
                sent.add(line);
                stream.append(line).append(random.nextBoolean() ? "\r\n" : "\n");
            }
            stream.append("12.");
            List<String> got = new ArrayList<>();
            LineParts parts = LineParts.NONE;
            int at = 0;
            while (at < stream.length()) {
                int to = Math.min(stream.length(), at + 1 + random.nextInt(9));
                parts = parts.and(stream.substring(at, to));
                got.addAll(parts.lines());
                at = to;
            }
            assertThat(got).isEqualTo(sent);
            assertThat(parts.rest()).isEqualTo("12.");
        }
    }

    @Test
    void aLineWithoutEndIsNotKeptForEver() {
        LineParts parts = LineParts.NONE;
        for (int i = 0; i < 1000; i++) {
            parts = parts.and("noise without an end ");
        }
        assertThat(parts.rest().length()).isLessThanOrEqualTo(400);
        assertThat(parts.and("5 g\n").lines())
                .noneMatch(line -> USUAL.read(line).isPresent());
    }
}
