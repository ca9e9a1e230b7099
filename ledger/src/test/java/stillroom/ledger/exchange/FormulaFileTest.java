package stillroom.ledger.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.formula.Step;
import stillroom.formulary.label.Durability;
import stillroom.formulary.label.LabelInput;
import stillroom.formulary.label.LabelSheet;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.StarterLibrary;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.Money;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;
import stillroom.formulary.quantity.Price;

class FormulaFileTest {
    private static final Path DOCS = Path.of("..", "docs");
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final StarterLibrary LIBRARY = StarterLibrary.load();

    private static JsonSchema schema() throws IOException {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(Files.readString(DOCS.resolve("schema/formula-1.json")));
    }

    static Stream<Path> examples() throws IOException {
        List<Path> examples;
        try (Stream<Path> files = Files.list(DOCS.resolve("examples"))) {
            examples = files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
        assertThat(examples).hasSizeGreaterThanOrEqualTo(5);
        return examples.stream();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void exampleFollowsTheSchemaAndIsRead(Path file) throws IOException {
        String text = Files.readString(file);
        assertThat(schema().validate(text, InputFormat.JSON)).isEmpty();
        Reading reading = FormulaFileReader.read(text);
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.file()).isPresent();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void exampleWrittenAgainIsTheSameText(Path file) throws IOException {
        String text = Files.readString(file);
        String written =
                FormulaFileWriter.write(FormulaFileReader.read(text).file().orElseThrow());
        if (text.lines().count() > 1) {
            assertThat(written).isEqualTo(text);
        }
        assertThat(FormulaFileWriter.write(
                        FormulaFileReader.read(written).file().orElseThrow()))
                .isEqualTo(written);
        assertThat(schema().validate(written, InputFormat.JSON)).isEmpty();
    }

    @Test
    void whatANewerVersionWroteIsKeptWhereItStood() throws IOException {
        Reading reading = FormulaFileReader.read(Files.readString(DOCS.resolve("examples/from-a-newer-version.json")));
        assertThat(reading.remarks())
                .extracting(FileProblem::field)
                .containsExactlyInAnyOrder("season", "shade", "carbonFootprint");
        JsonNode again = JSON.readTree(FormulaFileWriter.write(reading.file().orElseThrow()));
        assertThat(again.at("/brief/season").asText()).isEqualTo("winter");
        assertThat(again.at("/phases/0/lines/0/shade/l").asInt()).isEqualTo(92);
        assertThat(again.at("/carbonFootprint/kilograms").asDouble()).isEqualTo(1.4);
    }

    @Test
    void keptFieldsFollowTheirLineWhenLinesAreReordered() throws IOException {
        FormulaFile file = FormulaFileReader.read(Files.readString(DOCS.resolve("examples/from-a-newer-version.json")))
                .file()
                .orElseThrow();
        Phase phase = file.formula().phases().get(0);
        List<Line> turned = new ArrayList<>(phase.lines());
        java.util.Collections.reverse(turned);
        FormulaFile edited = new FormulaFile(
                file.name(),
                file.note(),
                file.brief(),
                new Formula(List.of(new Phase(phase.id(), phase.name(), turned, phase.steps()))),
                file.made(),
                file.label(),
                file.materials(),
                file.substances(),
                file.kept());
        JsonNode again = JSON.readTree(FormulaFileWriter.write(edited));
        assertThat(again.at("/phases/0/lines/2/shade/l").asInt()).isEqualTo(92);
        assertThat(again.at("/phases/0/lines/0").has("shade")).isFalse();
    }

    @Test
    void everyCardAndSubstanceOfTheLibraryComesBackEqual() throws IOException {
        FormulaFile file = new FormulaFile(
                "All",
                "",
                Brief.of(ProductType.BALM),
                new Formula(
                        List.of(new Phase("a", "A", List.of(new Line("l1", "x", Amount.fixed("100"), "")), List.of()))),
                Optional.empty(),
                Optional.empty(),
                LIBRARY.materials(),
                LIBRARY.substances(),
                List.of());
        assertThat(file.materials()).hasSizeGreaterThan(100);
        String text = FormulaFileWriter.write(file);
        Reading reading = FormulaFileReader.read(text);
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.remarks()).isEmpty();
        assertThat(reading.file()).contains(file);
        assertThat(schema().validate(text, InputFormat.JSON)).isEmpty();
    }

    static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void randomFileComesBackEqual(int seed) throws IOException {
        FormulaFile file = random(new Random(seed));
        String text = FormulaFileWriter.write(file);
        Reading reading = FormulaFileReader.read(text);
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.file()).contains(file);
        assertThat(FormulaFileWriter.write(reading.file().orElseThrow())).isEqualTo(text);
    }

    @Test
    void aFormulaLineIsOneLineOfText() {
        FormulaFile file = random(new Random(3));
        String text = FormulaFileWriter.write(file);
        for (Line line : file.formula().lines()) {
            assertThat(text.lines().filter(one -> one.contains("\"id\": \"" + line.id() + "\"")))
                    .singleElement()
                    .asString()
                    .matches("\\s+\\{.*\\},?");
        }
    }

    @Test
    void everyFieldThatIsWrittenStandsInTheSchemaAndInTheDocument() throws IOException {
        String text = FormulaFileWriter.write(full());
        assertThat(FormulaFileReader.read(text).problems()).isEmpty();
        assertThat(FormulaFileReader.read(text).file()).contains(full());
        assertThat(schema().validate(text, InputFormat.JSON)).isEmpty();
        String schema = Files.readString(DOCS.resolve("schema/formula-1.json"));
        String document = Files.readString(DOCS.resolve("file-format.md"));
        Set<String> fields = new TreeSet<>();
        collect(JSON.readTree(text), fields);
        assertThat(fields).hasSizeGreaterThan(60);
        for (String field : fields) {
            assertThat(schema).contains("\"" + field + "\": ");
            assertThat(document).as("docs/file-format.md explains " + field).containsPattern("[`\"]" + field + "[`\"]");
        }
    }

    @Test
    void theSchemaKnowsEveryWordOfTheClosedSets() throws IOException {
        String schema = Files.readString(DOCS.resolve("schema/formula-1.json"));
        List<Enum<?>> words = new ArrayList<>();
        words.addAll(Arrays.asList(ProductType.values()));
        words.addAll(Arrays.asList(Brief.People.values()));
        words.addAll(Arrays.asList(Family.values()));
        words.addAll(Arrays.asList(ReadingKind.values()));
        words.addAll(Arrays.asList(stillroom.formulary.material.Strength.Basis.values()));
        words.addAll(Arrays.asList(stillroom.formulary.material.ChargeClass.values()));
        words.addAll(Arrays.asList(stillroom.formulary.material.CounterIon.values()));
        words.addAll(Arrays.asList(stillroom.formulary.material.Constituent.Role.values()));
        assertThat(words).allSatisfy(word -> assertThat(schema).contains("\"" + Words.of(word) + "\""));
    }

    private static void collect(JsonNode node, Set<String> fields) {
        node.fieldNames().forEachRemaining(fields::add);
        node.forEach(child -> collect(child, fields));
    }

    private static FormulaFile random(Random random) {
        List<Phase> phases = new ArrayList<>();
        int lines = 0;
        for (int p = 0; p <= random.nextInt(4); p++) {
            List<Line> of = new ArrayList<>();
            for (int i = 0; i <= random.nextInt(6); i++) {
                of.add(new Line(
                        "l" + ++lines, named(random), amount(random), random.nextBoolean() ? "why \"so\"" : ""));
            }
            List<Step> steps = random.nextBoolean()
                    ? List.of()
                    : List.of(new Step(
                            "s" + p, "Heat to 75 °C.", Optional.of(75.5), "slow", Optional.of(10.0), "clear", "hot"));
            phases.add(new Phase("p" + p, "Phase " + p, of, steps));
        }
        List<Material> cards = new ArrayList<>(LIBRARY.materials());
        java.util.Collections.shuffle(cards, random);
        return new FormulaFile(
                "Prüfmuster <b>",
                random.nextBoolean() ? "" : "note",
                brief(random),
                new Formula(phases),
                random.nextBoolean()
                        ? Optional.empty()
                        : Optional.of(new FormulaFile.Made(
                                Optional.of(new Interval(4.5, 4.75)), Percent.of("" + random.nextInt(20)))),
                Optional.empty(),
                cards.subList(0, random.nextInt(4)),
                LIBRARY.substances().subList(0, random.nextInt(4)),
                List.of());
    }

    private static String named(Random random) {
        List<Material> cards = LIBRARY.materials();
        return switch (random.nextInt(3)) {
            case 0 -> "inci:Aqua";
            case 1 -> "cas:56-81-5";
            default -> cards.get(random.nextInt(cards.size())).key();
        };
    }

    private static Amount amount(Random random) {
        return switch (random.nextInt(6)) {
            case 0 -> new Amount.ToHundred();
            case 1 ->
                new Amount.ToReading(
                        ReadingKind.values()[random.nextInt(ReadingKind.values().length)],
                        Percent.of("0.3"),
                        PercentRange.of("0.1", "0." + (3 + random.nextInt(6))));
            default -> Amount.fixed("" + random.nextInt(100) + "." + random.nextInt(1000));
        };
    }

    private static Brief brief(Random random) {
        ProductType[] types = ProductType.values();
        return new Brief(
                types[random.nextInt(types.length)],
                java.util.EnumSet.of(Brief.People.ADULTS, Brief.People.values()[random.nextInt(6)]),
                random.nextBoolean() ? "" : "face",
                "",
                random.nextBoolean() ? Optional.empty() : Optional.of(new Interval(4.5, 5)),
                random.nextBoolean() ? Optional.empty() : Optional.of(4.8),
                random.nextBoolean() ? Optional.empty() : Optional.of(Money.of("2.50")),
                random.nextBoolean() ? List.of() : List.of("gentle", "free from, well, nothing"),
                "",
                random.nextBoolean() ? "EU" : "US");
    }

    /** A file in which every field has something to say. */
    private static FormulaFile full() {
        FormulaFile some = random(new Random(1));
        Formula formula = new Formula(List.of(new Phase(
                "a",
                "A",
                List.of(
                        new Line("l1", "inci:Aqua", new Amount.ToHundred(), "why"),
                        new Line("l2", "cas:56-81-5", Amount.fixed("2"), ""),
                        new Line(
                                "l3",
                                "glycerin-99",
                                new Amount.ToReading(ReadingKind.PH, Percent.of("0.2"), PercentRange.of("0.1", "0.3")),
                                "")),
                List.of(new Step("s1", "Stir.", Optional.of(40.0), "slow", Optional.of(3.0), "clear", "hot")))));
        Material card = LIBRARY.material("sles-70").orElseThrow();
        Material whole = new Material(
                card.key(),
                2,
                card.revisedOn(),
                card.name(),
                card.family(),
                card.functions(),
                List.of(
                        new stillroom.formulary.material.Constituent(
                                "material:sles-27",
                                new stillroom.formulary.material.MassFraction(0.4, 0.5, 0.6),
                                stillroom.formulary.material.Constituent.Role.IMPURITY),
                        stillroom.formulary.material.Constituent.exactly("water", 0.5)),
                card.strength(),
                Optional.of(PercentRange.of("1", "2")),
                Optional.of(new Interval(4, 8)),
                Optional.of(new Interval(6, 7)),
                Optional.of(1.05),
                "mixes",
                Optional.of(60.0),
                List.of("gloves"),
                "paste",
                "invented",
                Optional.of(new Price(Money.of("3"), Grams.of("100"))),
                "note",
                Optional.of(0.5),
                Map.of("usage", "from memory"),
                Optional.of(new stillroom.formulary.material.FragranceCertificate(
                        java.time.LocalDate.of(2026, 1, 2),
                        "51st amendment",
                        List.of(new stillroom.formulary.material.FragranceCertificate.MaximumUse(
                                "5A", Set.of(ProductType.BODY_LOTION), Percent.of("1.5"))),
                        Optional.of(12.0))));
        Brief brief = new Brief(
                ProductType.TONER,
                Set.of(Brief.People.ADULTS),
                "face",
                "light",
                Optional.of(new Interval(4, 5)),
                Optional.of(4.5),
                Optional.of(Money.of("2")),
                List.of("gentle"),
                "bottle",
                "EU");
        LabelSheet label = new LabelSheet(
                new LabelInput(
                        "T",
                        "f",
                        "1 g",
                        "R",
                        "b",
                        "en",
                        Optional.of(new Durability(
                                Optional.of(java.time.LocalDate.of(2027, 1, 1)), Optional.of(6), "study", "A")),
                        List.of("Keep cool.")),
                60,
                40);
        return new FormulaFile(
                "Full",
                "note",
                brief,
                formula,
                Optional.of(new FormulaFile.Made(Optional.of(new Interval(4, 5)), Percent.of("2"))),
                Optional.of(label),
                List.of(whole),
                LIBRARY.substances(),
                some.kept());
    }
}
