package stillroom.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import stillroom.desk.cli.formula.EvaluateCommand;
import stillroom.desk.cli.formula.LabelCommand;
import stillroom.desk.cli.formula.PlanCommand;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.ledger.Ledger;

class FormulaCommandsTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Path EXAMPLES = Path.of("..", "docs", "examples");

    @TempDir
    Path folder;

    private record Ran(int status, String out, String err) {
        List<JsonNode> answers() throws IOException {
            List<JsonNode> answers = new ArrayList<>();
            for (String line : out.split("\\R")) {
                answers.add(JSON.readTree(line));
            }
            return answers;
        }
    }

    private static Ran run(Object command, String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = new CommandLine(command)
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(arguments);
        return new Ran(status, out.toString(), err.toString());
    }

    private static String example(String name) {
        return EXAMPLES.resolve(name + ".json").toString();
    }

    private static Ran evaluate(String... arguments) {
        return run(new EvaluateCommand(), arguments);
    }

    @ParameterizedTest
    @CsvSource({
        "from-a-newer-version, 0, no-warnings",
        "too-much-preservative, 4, warnings",
        "own-materials, 5, not-wholly-judged"
    })
    void exampleEndsWithItsStatus(String name, int status, String word) throws IOException {
        Ran ran = evaluate(example(name), "--as-of", "2026-11-25", "--json");
        assertThat(ran.status()).isEqualTo(status);
        assertThat(ran.answers())
                .singleElement()
                .satisfies(answer -> assertThat(answer.path("status").asText()).isEqualTo(word));
        assertThat(evaluate(example(name), "--as-of", "2026-11-25").status()).isEqualTo(status);
    }

    @Test
    void theStatusFollowsFromTheCounts() throws IOException {
        for (String name : List.of("hand-cream", "shortest", "own-materials", "too-much-preservative")) {
            Ran ran = evaluate(example(name), "--as-of", "2026-11-25", "--json");
            JsonNode counts = ran.answers().get(0).path("counts");
            int warnings = counts.path("breach").asInt()
                    + counts.path("probable-fault").asInt();
            int open = counts.path("cannot-judge").asInt();
            assertThat(ran.status()).as(name).isEqualTo(warnings > 0 ? 4 : open > 0 ? 5 : 0);
        }
    }

    @Test
    void aBreachCarriesRuleSourceParagraphAndFigures() throws IOException {
        JsonNode answer = evaluate(
                        example("too-much-preservative"), "--market", "EU", "--as-of", "2026-11-25", "--json")
                .answers()
                .get(0);
        JsonNode breach = answer.at("/findings/0");
        assertThat(breach.path("kind").asText()).isEqualTo("breach");
        assertThat(breach.path("rule").asText()).isEqualTo("eu-annex-v-1.b");
        assertThat(breach.path("paragraph").asText()).contains("Annex V");
        assertThat(breach.path("sourceKey").asText()).isEqualTo("cosing-annex-v-2026");
        assertThat(breach.at("/lines/0/number").asInt()).isEqualTo(3);
        // 0.7 % sodium benzoate (144.11 g/mol) is 0.593 % benzoic acid (122.12 g/mol)
        double most = 0.7 * 122.12 / 144.11;
        assertThat(breach.at("/figures/0/high").asDouble()).isBetween(most - 0.005, most + 0.001);
        assertThat(breach.at("/figures/1/value").asDouble()).isEqualTo(0.5);
        assertThat(breach.path("mend").asText()).isNotEmpty();
        assertThat(answer.at("/counts/breach").asInt()).isEqualTo(1);
        assertThat(answer.at("/preservation/0/against").size()).isPositive();
        assertThat(answer.at("/composition/substances/0/inci").asText()).isEqualTo("Aqua");
        assertThat(answer.at("/figures/totalPercent/value").asDouble()).isEqualTo(100);
    }

    @Test
    void eachFileIsAnsweredInItsOrderWhateverTheOthersAre() throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.json"), "{\"brief\": ");
        Ran ran = evaluate(
                example("from-a-newer-version"),
                broken.toString(),
                "no/such/file",
                example("too-much-preservative"),
                "--json");
        assertThat(ran.status()).isEqualTo(3);
        assertThat(ran.answers())
                .extracting(answer -> answer.path("status").asText())
                .containsExactly("no-warnings", "unreadable", "unreadable", "warnings");
        assertThat(ran.answers().get(1).path("error").asText())
                .startsWith("this is not JSON")
                .contains("text line 1");
        assertThat(ran.out()).doesNotContain("Exception");
    }

    @Test
    void commonNamesAndForbiddenSubstancesAreMetByName() throws IOException {
        Path file = Files.writeString(
                folder.resolve("named.json"),
                "{\"brief\":{\"type\":\"balm\"},\"lines\":[{\"inci\":\"Petroleum Jelly\",\"qs\":\"100\"},"
                        + "{\"inci\":\"HICC\",\"percent\":0.1},{\"cas\":\"8007-45-2\",\"percent\":1}]}");
        JsonNode answer = evaluate(file.toString(), "--as-of", "2026-11-25", "--json")
                .answers()
                .get(0);
        assertThat(answer.path("findings"))
                .filteredOn(finding -> finding.path("kind").asText().equals("breach"))
                .extracting(finding -> finding.path("rule").asText())
                .containsExactlyInAnyOrder("eu-annex-ii-1380", "eu-annex-ii-420");
        assertThat(answer.at("/composition/unknown")).isEmpty();
    }

    @Test
    void standardInputIsRead() throws IOException {
        InputStream before = System.in;
        try {
            System.setIn(new ByteArrayInputStream(
                    Files.readString(EXAMPLES.resolve("hand-cream.json")).getBytes(StandardCharsets.UTF_8)));
            assertThat(evaluate("-", "--json").answers().get(0).path("name").asText())
                    .isEqualTo("Hand cream");
        } finally {
            System.setIn(before);
        }
    }

    @Test
    void textIsAtMostEightyColumnsAndMovesNoCursor() throws IOException {
        String hostile = "{\"name\":\"" + "\\u001b[2J \\u202e" + "very long name ".repeat(20)
                + "\",\"brief\":{\"type\":\"toner\",\"claims\":[\"<script>alert(1)</script>\"]},\"lines\":[{\"inci\":\"\\u001b]0;x\\u0007 ../../etc\",\"percent\":3},{\"inci\":\"Aqua\",\"qs\":\"100\"}]}";
        Path file = Files.writeString(folder.resolve("hostile.json"), hostile);
        for (Object command : List.of(new EvaluateCommand(), new LabelCommand())) {
            Ran ran = run(command, file.toString(), example("own-materials"));
            assertThat(ran.out()).doesNotContain("\u001b", "\u202e", "\u0007");
            assertThat(ran.out().lines())
                    .allSatisfy(line ->
                            assertThat(line.codePointCount(0, line.length())).isLessThanOrEqualTo(80));
        }
        Ran plan = run(new PlanCommand(), example("own-materials"), "--batch", "500");
        assertThat(plan.out().lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
    }

    @ParameterizedTest
    @CsvSource({
        "--market, FR, No rule tables are recorded",
        "--market, '', No rule tables are recorded",
        "--as-of, 2026-13-01, is no day",
        "--as-of, tomorrow, is no day"
    })
    void aSlipOfTheCommandLineIsTwoAndASentence(String option, String value, String sentence) {
        Ran ran = evaluate(example("hand-cream"), option, value);
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains(sentence).doesNotContain("Exception");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void theMarketAskedGoesBeforeTheFiles() throws IOException {
        JsonNode answer = evaluate(example("hand-cream"), "--market", "us", "--json")
                .answers()
                .get(0);
        assertThat(answer.path("market").asText()).isEqualTo("US");
    }

    @Test
    void theDayAskedDecides() throws IOException {
        String file = Files.writeString(
                        folder.resolve("retinol.json"),
                        "{\"brief\":{\"type\":\"face-cream\"},\"lines\":[{\"inci\":\"Linalool\",\"percent\":0.5},{\"inci\":\"Caprylic/Capric Triglyceride\",\"qs\":\"100\"}]}")
                .toString();
        Ran then = evaluate(file, "--as-of", "2020-01-01", "--json");
        Ran now = evaluate(file, "--as-of", "2028-08-01", "--json");
        assertThat(then.answers().get(0).path("asOf").asText()).isEqualTo("2020-01-01");
        assertThat(now.answers().get(0).path("asOf").asText()).isEqualTo("2028-08-01");
    }

    @Test
    void aWorkshopsOwnCardsAreFoundWhileItIsOpen() throws IOException {
        Path data = folder.resolve("workshop");
        String formula = Files.writeString(
                        folder.resolve("own.json"),
                        "{\"brief\":{\"type\":\"toner\"},\"lines\":[{\"material\":\"our-blend\",\"percent\":100}]}")
                .toString();
        try (Ledger ledger = Ledger.open(data)) {
            ledger.materials()
                    .save(Material.named("our-blend", "Our blend", Family.HUMECTANT)
                            .withRevision(0)
                            .withComposition(Constituent.exactly("glycerin", 1)));
            JsonNode with = evaluate(formula, "--data", data.toString(), "--json")
                    .answers()
                    .get(0);
            assertThat(with.at("/composition/unknown").size()).isZero();
            assertThat(with.at("/composition/substances/0/substance").asText()).isEqualTo("glycerin");
        }
        JsonNode without = evaluate(formula, "--json").answers().get(0);
        assertThat(without.at("/composition/unknown/0").asText()).isEqualTo("our-blend");
        assertThat(without.path("status").asText()).isEqualTo("not-wholly-judged");
    }

    @Test
    void theLabelListsIngredients() throws IOException {
        Ran ran = run(new LabelCommand(), example("hand-cream"), "--json", "--as-of", "2026-11-25");
        assertThat(ran.answers().get(0).path("ingredientText").asText())
                .startsWith("Ingredients: Aqua, Helianthus Annuus Seed Oil,");
        Ran us = run(new LabelCommand(), example("hand-cream"), "--json", "--market", "US");
        assertThat(us.answers().get(0).path("ingredientText").asText()).startsWith("Ingredients: Water,");
        assertThat(ran.answers().get(0).at("/ingredients/0/block").asText()).isEqualTo("ordered");
    }

    @ParameterizedTest
    @CsvSource({"500, 0.1", "333.3, 0.1", "50, 0.01", "1200, 1"})
    void thePlanAddsUpExactly(String batch, String step) throws IOException {
        Ran ran = run(new PlanCommand(), example("hand-cream"), "--batch", batch, "--step", step, "--json");
        assertThat(ran.status()).isZero();
        BigDecimal sum = BigDecimal.ZERO;
        int lines = 0;
        for (JsonNode line : ran.answers().get(0).path("lines")) {
            sum = sum.add(new BigDecimal(line.path("grams").asText()));
            lines++;
        }
        assertThat(lines).isEqualTo(5);
        assertThat(sum).isEqualByComparingTo(batch);
    }

    @ParameterizedTest
    @CsvSource({"-5, 0.1", "0, 0.1", "NaN, 0.1", "1e9, 0.1", "500, 0", "500, x"})
    void aPlanOfNoSizeIsRefused(String batch, String step) {
        Ran ran = run(new PlanCommand(), example("hand-cream"), "--batch=" + batch, "--step=" + step);
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("must be grams above 0").doesNotContain("Exception");
    }

    @Test
    void aFormulaThatDoesNotAddUpIsJudgedButNotPlanned() throws IOException {
        String file = Files.writeString(
                        folder.resolve("short.json"),
                        "{\"name\":\"Short\",\"brief\":{\"type\":\"body-oil\"},\"lines\":[{\"material\":\"sunflower-oil\",\"percent\":90}]}")
                .toString();
        assertThat(evaluate(file, "--json")
                        .answers()
                        .get(0)
                        .at("/findings/0/rule")
                        .asText())
                .isEqualTo("balance.total");
        Ran plan = run(new PlanCommand(), file, "--batch", "100", "--json");
        assertThat(plan.status()).isEqualTo(3);
        assertThat(plan.answers().get(0).path("error").asText()).contains("add up to 90 %");
    }

    @Test
    void everyKeyOfAnAnswerIsDocumented() throws IOException {
        String document = Files.readString(Path.of("..", "docs", "commands.md"));
        for (Ran ran : Arrays.asList(
                evaluate(example("own-materials"), "--json"),
                run(new LabelCommand(), example("own-materials"), "--json"),
                run(new PlanCommand(), example("own-materials"), "--batch", "500", "--json"))) {
            ran.answers()
                    .get(0)
                    .fieldNames()
                    .forEachRemaining(field -> assertThat(document).contains("`" + field + "`"));
        }
    }
}
