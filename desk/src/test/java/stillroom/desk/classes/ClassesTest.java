package stillroom.desk.classes;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Line;
import stillroom.formulary.plan.ClassOf;
import stillroom.formulary.quantity.Grams;

class ClassesTest {
    @TempDir
    Path folder;

    private static Map<String, String> form(FormulaVersion version, String each) {
        Map<String, String> form = new HashMap<>(Map.of(
                "title",
                "Spring <class>",
                "day",
                "2026-12-01",
                "sets",
                "10",
                "each",
                each,
                "step",
                "0.1",
                "spare",
                "10"));
        String water = lineOf(version, "water-purified").id();
        form.put("premix-" + lineOf(version, "sodium-benzoate").id(), water);
        form.put("premix-" + lineOf(version, "potassium-sorbate").id(), water);
        return form;
    }

    private static Line lineOf(FormulaVersion version, String material) {
        return version.formula().lines().stream()
                .filter(line -> line.materialKey().equals(material))
                .findFirst()
                .orElseThrow();
    }

    private static String text(OpenDesk desk, String path, int pages) throws IOException, InterruptedException {
        byte[] pdf = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(desk.address() + path))
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray())
                .body();
        Files.createDirectories(Path.of("target"));
        Files.write(Path.of("target", "class" + path.substring(path.lastIndexOf('/') + 1)), pdf);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isBetween(pages, pages + 1);
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    private static FormulaVersion washVersion(OpenDesk desk) {
        return desk.ledger().products().version(1, 1).orElseThrow();
    }

    @Test
    void aClassOfTenIsPlannedPreparedBegunAndTyped() throws Exception {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            desk.post("/demonstration", Map.of());
            FormulaVersion version = washVersion(desk);
            Answer set = desk.post("/products/1/versions/1/class", form(version, "100"));
            assertThat(set.location()).isEqualTo("/classes/1?did=added");
            String page = desk.get("/classes/1").body();
            assertThat(page).contains("Spring &lt;class&gt;", "10 sets of 100 g", "Make this premix");
            // 100 g x 10 x 1.1 at 0.45 % sodium benzoate is 4.95 g, rounded up to the step.
            assertThat(page).contains("5 g in ");
            String sheets = text(desk, "/classes/1/sheets.pdf", 10);
            assertThat(sheets).contains("Set 10", "Allergies", "Foaming hand wash");
            assertThat(sheets).contains("Not to be handed out yet: the premix of Sodium benzoate");
            assertThat(page).contains("Make the premix of Sodium benzoate", "is not ready. Each set would be begun");
            assertThat(text(desk, "/classes/1/labels.pdf", 1)).contains("For your own use", "Sodium Benzoate");

            Answer early = desk.post("/classes/1/begin", Map.of("who", "Wren"));
            assertThat(early.status())
                    .as("its preservative is too little for these balances")
                    .isEqualTo(422);
            assertThat(early.body()).contains("cannot begin as it stands");

            Map<String, String> finer = form(version, "300");
            finer.put("step", "0.01");
            desk.post("/products/1/versions/1/class", finer);
            Answer begun = desk.post("/classes/2/begin", Map.of("who", "Wren"));
            assertThat(begun.status()).as(begun.body()).isEqualTo(303);
            ClassOf lesson = lesson(desk);
            assertThat(lesson.batches()).hasSize(10);
            desk.post("/classes/2/begin", Map.of("who", "Wren"));
            assertThat(lesson(desk).batches()).as("begun once").isEqualTo(lesson.batches());
            types(desk, lesson, lineOf(version, "glycerin-99").id());
        }
    }

    private static ClassOf lesson(OpenDesk desk) {
        return lesson(desk, "2");
    }

    private static ClassOf lesson(OpenDesk desk, String key) {
        return desk.ledger().drawer("class", ClassOf.class).read(key).orElseThrow();
    }

    private static void types(OpenDesk desk, ClassOf lesson, String glycerin) {
        long first = lesson.batches().get(0);
        long second = lesson.batches().get(1);
        Matcher token = Pattern.compile("name=\"token\" value=\"([^\"]+)\"")
                .matcher(desk.get("/classes/2").body());
        assertThat(token.find()).isTrue();
        Map<String, String> grid = Map.of(
                "token",
                token.group(1),
                "by",
                "Wren",
                "g-" + first + "-" + glycerin,
                "3,1",
                "g-" + second + "-" + glycerin,
                "lots");
        Answer mixed = desk.post("/classes/2/grid", grid);
        assertThat(mixed.status()).isEqualTo(422);
        assertThat(mixed.body()).contains("is not a number");
        desk.post("/classes/2/grid", grid);
        List<BatchEvent> events = desk.ledger().batches().log(first).stream()
                .map(entry -> entry.event())
                .toList();
        assertThat(events)
                .filteredOn(BatchEvent.Poured.class::isInstance)
                .as("sent twice, taken once")
                .hasSize(1);
        assertThat(BatchState.of(desk.ledger().batches().log(first)).poured(glycerin))
                .isEqualTo(Grams.of("3.1"));
        assertThat(BatchState.of(desk.ledger().batches().log(second)).pours()).isEmpty();
        assertThat(desk.get("/classes/2").body()).contains("3.1");
    }

    @Test
    void thePremixIsMadeAtTheBenchForAllSets() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            desk.post("/demonstration", Map.of());
            FormulaVersion version = washVersion(desk);
            desk.post("/products/1/versions/1/class", form(version, "100"));
            String benzoate = lineOf(version, "sodium-benzoate").id();
            Answer made = desk.post("/classes/1/premix/" + benzoate, Map.of("who", "Wren"));
            assertThat(made.status()).as(made.body()).isEqualTo(303);
            assertThat(made.location()).matches("/batches/\\d+/bench\\?did=planned");
            assertThat(desk.get(made.location()).body()).contains("Premix of Sodium benzoate");
            assertThat(desk.post("/classes/1/premix/nothing", Map.of()).status())
                    .isEqualTo(400);
            assertThat(desk.get("/classes/7").status()).isEqualTo(404);
        }
    }

    @Test
    void whatCannotBeIsSaidAndNothingIsSetUp() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            desk.post("/demonstration", Map.of());
            FormulaVersion version = washVersion(desk);
            Map<String, String> wrong = new HashMap<>(form(version, "none"));
            wrong.put("sets", "4000");
            wrong.put("step", "7");
            Answer refused = desk.post("/products/1/versions/1/class", wrong);
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.body()).contains("must lie between 1 and 40", "Choose the step");
            assertThat(desk.ledger().drawer("class", ClassOf.class).list()).isEmpty();
        }
    }

    /** 90 h on the shelf where 72 h are allowed: the grid asks as the bench does, and the reason stands in the log. */
    @Test
    void aPremixThatStoodTooLongAsksWhyInTheGrid() {
        String benzoate;
        Answer grid;
        Map<String, String> typed = new HashMap<>();
        try (OpenDesk desk = OpenDesk.in(folder)) {
            desk.post("/demonstration", Map.of());
            FormulaVersion version = washVersion(desk);
            benzoate = lineOf(version, "sodium-benzoate").id();
            Map<String, String> finer = form(version, "300");
            finer.put("step", "0.01");
            desk.post("/products/1/versions/1/class", finer);
            shelve(desk, desk.post("/classes/1/premix/" + benzoate, Map.of("who", "Wren")));
            Answer begun = desk.post("/classes/1/begin", Map.of("who", "Wren"));
            assertThat(begun.status()).as(begun.body()).isEqualTo(303);
        }
        try (OpenDesk desk = OpenDesk.at(folder, OpenDesk.NOW.plus(Duration.ofHours(90)))) {
            List<Long> batches = lesson(desk, "1").batches();
            typed.put("token", "token-of-this-test");
            typed.put("by", "Wren");
            typed.put("g-" + batches.get(0) + "-" + benzoate, "20");
            typed.put("g-" + batches.get(1) + "-" + benzoate, "20");
            grid = desk.post("/classes/1/grid", typed);
            assertThat(grid.status()).isEqualTo(422);
            assertThat(grid.body()).contains("stood 90 h, allowed are 72 h", "Why these are used all the same");
            assertThat(desk.ledger().batches().log(batches.get(0)))
                    .noneMatch(entry -> entry.event() instanceof BatchEvent.Poured);
            typed.put("why", "clear, smells right");
            assertThat(desk.post("/classes/1/grid", typed).status()).isEqualTo(303);
            for (long batch : batches.subList(0, 2)) {
                assertThat(desk.ledger().batches().log(batch))
                        .extracting(entry -> entry.event())
                        .filteredOn(BatchEvent.Poured.class::isInstance)
                        .singleElement()
                        .satisfies(event -> assertThat(((BatchEvent.Poured) event).note())
                                .isEqualTo("clear, smells right; typed from the grid of the class"));
            }
        }
    }

    /** Weighs the premix as planned and puts it on the shelf. */
    private static void shelve(OpenDesk desk, Answer begun) {
        Matcher path = Pattern.compile("/batches/(\\d+)/bench").matcher(begun.location());
        assertThat(path.find()).isTrue();
        long batch = Long.parseLong(path.group(1));
        act(desk, batch, Map.of("act", "ready", "newVessel", "Jar", "clean", "washed", "phase", "premix"));
        BatchState.of(desk.ledger().batches().log(batch))
                .plan()
                .orElseThrow()
                .lines()
                .forEach(line -> act(
                        desk,
                        batch,
                        Map.of(
                                "act",
                                "weigh",
                                "do",
                                "weigh",
                                "vessel",
                                "Jar",
                                "line",
                                line.lineId(),
                                "mass",
                                line.target().toString(),
                                "note",
                                "weighed for the class")));
        act(desk, batch, Map.of("act", "step", "vessel", "Jar", "step", "even", "doing", "Stirred"));
        Answer shelved = desk.post(
                "/batches/" + batch + "/premix",
                Map.of("code", "PMX-K", "keeps", "2026-12-24", "by", "Wren", "requestId", "request-shelf"));
        assertThat(shelved.status()).as(shelved.body()).isEqualTo(303);
    }

    private static void act(OpenDesk desk, long batch, Map<String, String> fields) {
        Map<String, String> form = new HashMap<>(fields);
        form.put("requestId", UUID.randomUUID().toString());
        form.put("by", "Wren");
        form.put("seen", Integer.toString(desk.ledger().batches().log(batch).size()));
        Answer done = desk.post("/batches/" + batch + "/log", form);
        assertThat(done.status()).as(done.body()).isEqualTo(303);
    }
}
