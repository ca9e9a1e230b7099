package stillroom.desk.imports;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Product;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Money;
import stillroom.formulary.quantity.Price;

/** One road from a sheet to a stored formula, and what must not go along it. */
class ImportPagesTest {
    private static final String SHEET = """
            Phase;Rohstoff;%
            A;Wasser;ad 100
            A;Glycerin;2,5
            B;Sheabutter;10
            C;Duftöl Nr. 7;0,3
            """;

    @TempDir
    private Path folder;

    private OpenDesk desk;

    @BeforeEach
    void open() {
        desk = OpenDesk.in(folder);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private String look(String name, String text) {
        Answer answer = desk.upload("/import", Map.of(name, text.getBytes(StandardCharsets.UTF_8)));
        assertThat(answer.status()).as(answer.body()).isEqualTo(303);
        return answer.location();
    }

    /** The fields of the page as a browser would send them. */
    static Map<String, String> fields(String page) {
        Map<String, String> fields = new LinkedHashMap<>();
        Matcher input = Pattern.compile("<input\\b([^>]*)>").matcher(page);
        while (input.find()) {
            String name = attribute(input.group(1), "name");
            boolean box = input.group(1).contains("checkbox");
            boolean sent = !name.isEmpty() && (!box || input.group(1).matches("(?s).*\\bchecked\\b.*"));
            if (sent) {
                fields.put(name, box ? "on" : attribute(input.group(1), "value"));
            }
        }
        Matcher select = Pattern.compile("(?s)<select\\b([^>]*)>(.*?)</select>").matcher(page);
        while (select.find()) {
            Matcher chosen =
                    Pattern.compile("<option value=\"([^\"]*)\" selected").matcher(select.group(2));
            fields.put(attribute(select.group(1), "name"), chosen.find() ? chosen.group(1) : "");
        }
        return fields;
    }

    private static String attribute(String tag, String name) {
        Matcher found = Pattern.compile("\\b" + name + "=\"([^\"]*)\"").matcher(tag);
        return found.find() ? found.group(1).replace("&#34;", "\"").replace("&amp;", "&") : "";
    }

    @Test
    void aSheetIsShownThenStoredAsDraft() {
        String path = look("hand cream.csv", SHEET);
        assertThat(path).endsWith("/sheets/1");
        Answer page = desk.get(path);
        assertThat(page.body()).contains("Wasser", "q.s. to 100", "Sheabutter", "Phase B", "Duftöl Nr. 7");
        assertThat(desk.ledger().products().products()).isEmpty();
        Map<String, String> form = fields(page.body());
        form.put("do", "store");
        Answer stored = desk.post(path, form);
        assertThat(stored.status()).as(stored.body()).isEqualTo(303);
        Product product = desk.ledger().products().products().get(0);
        assertThat(product.name()).isEqualTo("hand cream");
        Formula formula =
                desk.ledger().products().newest(product.id()).orElseThrow().formula();
        assertThat(formula.phases()).extracting(phase -> phase.name()).containsExactly("Phase A", "Phase B", "Phase C");
        assertThat(formula.lines())
                .extracting(line -> line.materialKey())
                .containsExactly("water-purified", "glycerin-99", "shea-butter", "Duftöl Nr. 7");
        assertThat(formula.lines())
                .extracting(line -> line.amount())
                .containsExactly(new Amount.ToHundred(), Amount.fixed("2.5"), Amount.fixed("10"), Amount.fixed("0.3"));
        assertThat(desk.get(stored.location()).body()).contains("1 stored, 0 not stored");
    }

    @Test
    void aChangedGuessChangesWhatIsStoredAndTheCardIsRememberedForNextTime() {
        String text = "Stoff;Menge\nAqua;70\nMondstaub;30\n";
        String path = look("a.csv", text);
        Map<String, String> form = fields(desk.get(path).body());
        form.put("card-1-2", "Urea");
        form.put("amount-1-1", "q.s. to 100");
        form.put("title-1", "Moon tonic");
        form.put("do", "store");
        assertThat(desk.post(path, form).status()).isEqualTo(303);
        Product product = desk.ledger().products().products().get(0);
        assertThat(product.name()).isEqualTo("Moon tonic");
        Formula formula =
                desk.ledger().products().newest(product.id()).orElseThrow().formula();
        assertThat(formula.lines()).extracting(line -> line.materialKey()).containsExactly("water-purified", "urea");
        assertThat(formula.lines().get(0).amount()).isEqualTo(new Amount.ToHundred());
        assertThat(fields(desk.get(look("b.csv", text)).body())).containsEntry("card-1-2", "Urea");
    }

    @Test
    void anAmountThatCannotBeReadKeepsTheSheetFromBeingStored() {
        String path = look("a.csv", "INCI;%\nAqua;90\nGlycerin;a pinch\n");
        Map<String, String> form = fields(desk.get(path).body());
        form.put("do", "store");
        Answer refused = desk.post(path, form);
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.body()).contains("Row 3 (Glycerin) has no amount that can be taken");
        assertThat(desk.ledger().products().products()).isEmpty();
    }

    @Test
    void markupInANameIsShownAsText() {
        Answer page = desk.get(look("<b>x.csv", "INCI;%\n<script>alert(1)</script>;90\n<img src=x onerror=y>;10\n"));
        // What stands in an attribute between quotation marks is no markup.
        String markup = page.body().replaceAll("=\"[^\"]*\"", "");
        assertThat(markup)
                .doesNotContain("<script>alert", "<img src=x")
                .contains("&lt;script&gt;alert(1)&lt;/script&gt;");
    }

    @Test
    void aPathInAFileNameIsOnlyAName() {
        Answer page = desk.get(look("../../etc/hosts.csv", "INCI;%\nAqua;90\nUrea;10\n"));
        assertThat(page.body()).contains("hosts.csv").doesNotContain("../../etc");
    }

    @Test
    void aFileOfAHundredMegabytesIsRefusedInASentence() {
        Answer answer = desk.upload("/import", Map.of("large.csv", new byte[100_000_000]));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("Nothing was read; bring them in in parts.");
    }

    @Test
    void aFileAboveTenMegabytesIsRefusedByName() {
        Answer answer = desk.upload("/import", Map.of("large.csv", new byte[12_000_000]));
        assertThat(answer.status()).isEqualTo(303);
        assertThat(desk.get(answer.location()).body()).contains("larger than 10 MB");
    }

    @Test
    void aBatchIsReadWithAReportAndTheClearOnesAreStored() throws InterruptedException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (int i = 0; i < 200; i++) {
            String text = "INCI;%\nAqua;" + (i % 10 == 0 ? "80" : "90") + "\nUrea;10\n";
            files.put("formula " + i + ".csv", text.getBytes(StandardCharsets.UTF_8));
        }
        files.put("broken.xlsx", "PK\u0003\u0004 cut off".getBytes(StandardCharsets.UTF_8));
        Answer begun = desk.upload("/import", files);
        assertThat(begun.status()).isEqualTo(303);
        assertThat(settled(begun.location())).contains("Store the 180 without a question", "broken.xlsx");
        assertThat(desk.post(begun.location(), Map.of("do", "store-sound")).status())
                .isEqualTo(303);
        assertThat(settled(begun.location())).contains("180 stored, 20 not stored", "The lines add up to 90 %");
        assertThat(desk.ledger().products().products()).hasSize(180);
    }

    /** The page once the work in the background is done. */
    private String settled(String path) throws InterruptedException {
        String body = desk.get(path).body();
        for (int tries = 0; tries < 300 && body.contains(" done.</p>"); tries++) {
            Thread.sleep(200);
            body = desk.get(path).body();
        }
        return body;
    }

    @Test
    void aListOfMaterialsBecomesCardsPricesAndLots() {
        String path = look(
                "shelf.csv",
                "Material;Supplier;Price €/kg;Stock (g);Lot;Best before\nUrea;Invented & Co;12,50;500;U-77;31.12.2027\n"
                        + "Moon dust;Invented & Co;99;20;M-1;31.12.2027\n");
        Map<String, String> form = fields(desk.get(path).body());
        form.put("do", "store");
        Answer stored = desk.post(path, form);
        assertThat(stored.status()).as(stored.body()).isEqualTo(303);
        assertThat(desk.ledger().lots().lot("U-77")).hasValueSatisfying(lot -> {
            assertThat(lot.lot().materialKey()).isEqualTo("urea");
            assertThat(lot.lot().received().toString()).isEqualTo("500");
        });
        assertThat(desk.ledger().materials().book().material("moon-dust")).isPresent();
        assertThat(desk.ledger()
                        .materials()
                        .book()
                        .material("urea")
                        .orElseThrow()
                        .price())
                .isPresent();
    }

    private static final String SHELF =
            "Material;Supplier;Price €/kg;Stock (g);Lot;Best before\nUrea;Invented & Co;12,50;500;U-77;31.12.2027\n"
                    + "Moon dust;Invented & Co;99;20;M-1;31.12.2027\n";

    @Test
    void everyFigureOfAMaterialCanBeChangedBeforeItIsStored() {
        String path = look("shelf.csv", SHELF);
        Map<String, String> form = fields(desk.get(path).body());
        assertThat(form)
                .containsEntry("paid-m-1", "12.5")
                .containsEntry("per-m-1", "1000")
                .containsEntry("stock-m-1", "500")
                .containsEntry("expires-m-1", "2027-12-31");
        form.putAll(Map.of(
                "card-m-2", "Moon flour",
                "paid-m-2", "9,90",
                "per-m-2", "100",
                "stock-m-2", "25.5",
                "lot-m-2", "M-2",
                "supplier-m-2", "Invented & Daughters",
                "expires-m-2", "2028-01-31",
                "do", "store"));
        Answer stored = desk.post(path, form);
        assertThat(stored.status()).as(stored.body()).isEqualTo(303);
        assertThat(desk.ledger().materials().book().material("moon-flour")).hasValueSatisfying(card -> {
            assertThat(card.supplier()).isEqualTo("Invented & Daughters");
            assertThat(card.price()).contains(new Price(Money.of("9.90"), Grams.of("100")));
        });
        assertThat(desk.ledger().lots().lot("M-2")).hasValueSatisfying(lot -> {
            assertThat(lot.lot().received()).isEqualTo(Grams.of("25.5"));
            assertThat(lot.lot().expires()).contains(LocalDate.of(2028, 1, 31));
        });
        assertThat(desk.ledger().lots().lot("M-1")).isEmpty();
    }

    @Test
    void aFigureOfAMaterialThatCannotBeTakenIsSaidBesideItsFieldAndKept() {
        String path = look("shelf.csv", SHELF);
        Map<String, String> form = fields(desk.get(path).body());
        form.putAll(Map.of("stock-m-2", "a bagful", "per-m-1", "", "do", "store"));
        Answer refused = desk.post(path, form);
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.body())
                .contains("Row 3 (Moon dust): The amount on the shelf is not a number", "a bagful")
                .contains("Row 2 (Urea): Say for how many grams this was paid.", "id=\"per-m-1-problem\"");
        assertThat(desk.ledger().lots().all()).isEmpty();
        form.putAll(Map.of("stock-m-2", "20", "per-m-1", "1000"));
        assertThat(desk.post(path, form).status()).isEqualTo(303);
        assertThat(desk.ledger().lots().all()).hasSize(2);
    }

    /** What was stored before the stop stays, whole; nothing came after it; the rest can be stored later. */
    @Test
    void aBatchThatIsStoppedKeepsWhatItStoredAndGoesOnLater() throws InterruptedException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (int i = 0; i < 200; i++) {
            files.put("formula " + i + ".csv", "INCI;%\nAqua;90\nUrea;10\n".getBytes(StandardCharsets.UTF_8));
        }
        String batch = desk.upload("/import", files).location();
        settled(batch);
        Thread storing = new Thread(() -> desk.post(batch, Map.of("do", "store")));
        storing.start();
        while (desk.ledger().products().products().isEmpty()) {
            Thread.onSpinWait();
        }
        desk.post(batch, Map.of("do", "stop"));
        storing.join();
        String page = settled(batch);
        int stored = desk.ledger().products().products().size();
        assertThat(stored).as("stopped on the way").isLessThan(200);
        assertThat(page)
                .contains("Stopped. What was stored before stays stored")
                .contains(stored + " stored");
        desk.ledger()
                .products()
                .products()
                .forEach(product -> assertThat(desk.ledger()
                                .products()
                                .newest(product.id())
                                .orElseThrow()
                                .formula()
                                .lines())
                        .hasSize(2));
        desk.post(batch, Map.of("do", "store"));
        assertThat(settled(batch)).contains("200 stored, 0 not stored");
        assertThat(desk.ledger().products().products()).hasSize(200);
    }

    @Test
    void theSumStandsUnderTheLinesAndWhatWasFoundIsNamed() {
        String page = desk.get(look("salbe.csv", SHEET)).body();
        assertThat(page)
                .contains("Together 12.80 %; what is left to 100 is taken by the q.s. line.")
                .contains("as found: comma", "as found: %", "as found: one below the other");
        String ointment = "Lippenbalsam;\nRohstoff;%\nBienenwachs;20\nRizinusöl;90\n";
        assertThat(desk.get(look("lip.csv", ointment)).body())
                .contains("Together 110.00 %: not 100.")
                .containsPattern("value=\"LIP_PRODUCT\" selected");
    }
}
