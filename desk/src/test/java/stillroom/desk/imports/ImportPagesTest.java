package stillroom.desk.imports;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
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
}
