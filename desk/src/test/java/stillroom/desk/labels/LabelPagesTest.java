package stillroom.desk.labels;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ProductType;

/** The label of a version on the page and as a file. */
class LabelPagesTest {
    @TempDir
    Path folder;

    private OpenDesk desk;
    private String page;

    @BeforeEach
    void openWithOneVersion() {
        desk = OpenDesk.in(folder);
        Product product = desk.ledger().products().add("Hand <wash> of the test", Brief.of(ProductType.HAND_WASH), "");
        Formula formula = new Formula(List.of(new Phase(
                "p",
                "All",
                List.of(
                        new Line("l1", "water-purified", new Amount.ToHundred(), ""),
                        new Line("l2", "glycerin-99", Amount.fixed("5"), ""),
                        new Line("l3", "phenoxyethanol", Amount.fixed("0.9"), "")),
                List.of())));
        desk.ledger().products().newVersion(product.id(), Optional.empty(), formula, "", OpenDesk.NOW);
        page = "/products/" + product.id() + "/versions/1/label";
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private static Map<String, String> sound() {
        Map<String, String> form = new HashMap<>();
        form.put("productName", "Hand <wash> of the test");
        form.put("netContent", "250 ml");
        form.put("language", "en");
        form.put("width", "80");
        form.put("height", "50");
        return form;
    }

    @Test
    void listsIngredientsInDescendingOrder() {
        String body = desk.get(page).body();
        assertThat(body).contains("Ingredients: Aqua, Glycerin, Phenoxyethanol");
        assertThat(body).contains("Hand &lt;wash> of the test").doesNotContain("<wash>");
    }

    @Test
    void smallestLettersAreSaidInPlainWords() {
        assertThat(desk.get(page).body()).contains("They depend on the net content, which is not entered");
        Map<String, String> form = sound();
        form.put("netContent", "50000 g");
        desk.post(page, form);
        assertThat(desk.get(page).body())
                .contains("For this content no least height by this market's law is on record here")
                .doesNotContain("No row");
    }

    @Test
    void theLabelOfABatchLeadsToTheFormAndTheFormLeadsBack() {
        long product = desk.ledger().products().products().get(0).id();
        int edit = desk.ledger().products().version(product, 1).orElseThrow().edit();
        desk.ledger().products().keep(product, 1, edit);
        long batch = desk.ledger()
                .batches()
                .open(product, Optional.of(1), "B-7", LocalDate.of(2026, 11, 25))
                .orElseThrow()
                .id();
        String form = page + "?batch=" + batch;
        assertThat(desk.get("/batches/" + batch + "/label").body()).contains("href=\"" + form + "\"");
        String back = "href=\"/batches/" + batch + "/label\"";
        assertThat(desk.get(form).body()).contains(back, "The label of batch B-7", "action=\"" + form + "\"");
        OpenDesk.Answer saved = desk.post(form, sound());
        assertThat(saved.location()).isEqualTo(page + "?did=saved&batch=" + batch);
        assertThat(desk.get(saved.location()).body()).contains(back);
        assertThat(desk.post(form, Map.of("productName", "")).body()).contains(back);
        assertThat(desk.get(page + "?batch=nonsense").body())
                .contains("The formula")
                .doesNotContain("B-7");
    }

    @Test
    void givesNoPeriodAfterOpeningWithoutAReason() {
        Map<String, String> form = sound();
        form.put("months", "12");
        OpenDesk.Answer refused = desk.post(page, form);
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.body()).contains("needs its reason").contains("value=\"12\"");
        assertThat(desk.get(page).body()).contains("None, because no reason is recorded");

        form.put("reason", "Study of the test, 12 weeks");
        form.put("signedBy", "Somebody");
        assertThat(desk.post(page, form).status()).isEqualTo(303);
        assertThat(desk.get(page).body()).contains("12 M after opening (Study of the test, 12 weeks; Somebody)");
    }

    @Test
    void printsToTheMillimetreWithFiguresAsHighAsTheMarketAsks() throws Exception {
        desk.post(page, sound());
        byte[] file = file(page + ".pdf");
        Files.createDirectories(Path.of("target"));
        Files.write(Path.of("target", "label-test.pdf"), file);
        try (PDDocument document = Loader.loadPDF(file)) {
            PDRectangle size = document.getPage(0).getMediaBox();
            assertThat(size.getWidth() * 25.4 / 72).isCloseTo(80, org.assertj.core.data.Offset.offset(0.1));
            assertThat(size.getHeight() * 25.4 / 72).isCloseTo(50, org.assertj.core.data.Offset.offset(0.1));
            String text = new PDFTextStripper().getText(document);
            assertThat(text).contains("Hand <wash> of the test", "250 ml", "Aqua, Glycerin, Phenoxyethanol");
            // Directive 76/211/EEC annex I 3.1, from memory: above 200 up to 1000 ml, figures of at least 4 mm.
            assertThat(figureHeightMillimetres(document, "250")).isGreaterThanOrEqualTo(4.0);
        }
    }

    /** Height of the first figure of the first word that begins so, from the outline in the embedded font. */
    private static double figureHeightMillimetres(PDDocument document, String word) throws IOException {
        double[] height = {0};
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> positions) throws IOException {
                if (text.startsWith(word)) {
                    TextPosition first = positions.get(0);
                    PDVectorFont font = (PDVectorFont) first.getFont();
                    double perThousand = font.getNormalizedPath(first.getCharacterCodes()[0])
                            .getBounds2D()
                            .getHeight();
                    height[0] = perThousand / 1000 * first.getFontSizeInPt() * 25.4 / 72;
                }
            }
        };
        stripper.getText(document);
        return height[0];
    }

    @Test
    void saysWhenTheTextDoesNotFit() {
        Map<String, String> form = sound();
        form.put("width", "15");
        form.put("height", "15");
        desk.post(page, form);
        OpenDesk.Answer answer = desk.get(page + ".pdf");
        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.body()).contains("does not fit on 15 by 15 mm");
    }

    @Test
    void knowsNoLabelOfAVersionThatDoesNotExist() {
        assertThat(desk.get("/products/99/versions/1/label").status()).isEqualTo(404);
        assertThat(desk.get("/batches/99/label").status()).isEqualTo(404);
        assertThat(desk.get("/products/x/versions/1/label").status()).isEqualTo(404);
    }

    private byte[] file(String path) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(desk.address() + path))
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray())
                .body();
    }
}
