package stillroom.desk.sidebyside;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.trial.TrialSet;
import stillroom.ledger.batch.BatchRow;

/** On the invented workshop's hand wash, which has versions, batches, readings and trials. */
class SeveralPagesTest {
    @TempDir
    Path folder;

    private OpenDesk desk;
    private Product product;

    @BeforeEach
    void open() {
        desk = OpenDesk.in(folder);
        desk.post("/demonstration", Map.of());
        product = desk.ledger().products().products().stream()
                .filter(each -> each.brief().type() == ProductType.HAND_WASH)
                .findFirst()
                .orElseThrow();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private String path() {
        return "/side-by-side";
    }

    private FormulaVersion newest() {
        return desk.ledger().products().newest(product.id()).orElseThrow();
    }

    /** The newest with a preservative more than the law allows. */
    private FormulaVersion withTooMuch() {
        FormulaVersion from = newest();
        Formula changed = new Formula(from.formula().phases().stream()
                .map(phase -> new Phase(
                        phase.id(),
                        phase.name(),
                        phase.lines().stream()
                                .map(line -> line.materialKey().equals("sodium-benzoate")
                                        ? new Line(line.id(), line.materialKey(), Amount.fixed("4.321"), "")
                                        : line)
                                .toList(),
                        phase.steps()))
                .toList());
        return desk.ledger()
                .products()
                .newVersion(product.id(), Optional.of(from.number()), changed, "too much", OpenDesk.NOW);
    }

    private static String of(FormulaVersion version) {
        return version.productId() + "." + version.number();
    }

    /** The table that follows a heading. */
    private static String table(String page, String heading) {
        int from = page.indexOf("<h2>" + heading + "</h2>");
        assertThat(from).as(heading).isPositive();
        return page.substring(from, page.indexOf("</section>", from));
    }

    @Test
    void threeVersionsShowFormulaCompositionFiguresAndFindings() {
        FormulaVersion first = newest();
        FormulaVersion second = withTooMuch();
        FormulaVersion third = desk.ledger()
                .products()
                .newVersion(product.id(), Optional.of(second.number()), first.formula(), "back again", OpenDesk.NOW);
        String page = desk.get(path() + "?of=" + of(first) + "&of=" + of(second) + "&of=" + of(third))
                .body();
        assertThat(table(page, "Formula")).contains("4.32", "differs", "Sodium benzoate");
        assertThat(table(page, "Composition")).contains("differs");
        assertThat(table(page, "Evaluation and cost")).contains("Material cost of 100 g", "pH, expected", "benzo");
        String alike =
                desk.get(path() + "?of=" + of(first) + "&of=" + of(third)).body();
        assertThat(table(alike, "Formula")).doesNotContain("differs");
    }

    @Test
    void readingsAndPicturesOfTheirBatchesStandThere() throws IOException {
        BatchRow row = desk.ledger().products().versions(product.id()).stream()
                .flatMap(version -> desk.ledger().batches().fromVersion(product.id(), version.number()).stream())
                .findFirst()
                .orElseThrow();
        long batch = row.batch().id();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB), "png", bytes);
        Map<String, String> form =
                Map.of("requestId", "12345678-b", "when", "next day", "words", "<b>clear</b>", "by", "Wren");
        assertThat(desk.postFile("/batches/" + batch + "/pictures", form, "picture", "photo.png", bytes.toByteArray())
                        .status())
                .isEqualTo(303);
        String page = desk.get(path() + "?of=" + product.id() + "."
                        + row.batch().version().orElseThrow() + "&of=" + of(withTooMuch()))
                .body();
        assertThat(table(page, "Readings")).contains(row.batch().code(), "pH");
        assertThat(table(page, "Photographs"))
                .contains("/batches/" + batch + "/pictures/", ".jpg", "next day", "&lt;b&gt;clear&lt;/b&gt;");
    }

    @Test
    void runsOfTrialsStandBesideWhatTheyAreFrom() {
        TrialSet set = desk.ledger().drawer("trial-set", TrialSet.class).list().get(0);
        String base = set.base().product() + "." + set.base().version();
        TrialSet.Run run = set.runs().get(0);
        TrialSet.Run other = set.runs().get(1);
        String query = "?of=" + base + "&of=" + set.product() + "." + run.version() + "&of=" + set.product() + "."
                + other.version();
        String page = desk.get(path() + query).body();
        assertThat(table(page, "Trials"))
                .contains(set.name() + ", run " + run.order(), set.name() + ", run " + other.order())
                .contains(
                        set.responses().get(0).name() + "<",
                        set.responses().get(0).unit());
        assertThat(desk.get("/trials/" + set.key()).body()).contains("Side by side");
        String all = path() + "?of=" + base
                + set.runs().stream()
                        .map(one -> "&of=" + set.product() + "." + one.version())
                        .collect(java.util.stream.Collectors.joining());
        assertThat(desk.get(all).body())
                .contains("Six fit beside each other: 7 more were asked for and are left out.")
                .doesNotContain("Put it beside");
    }
}
