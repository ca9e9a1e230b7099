package stillroom.desk.recipes;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import stillroom.desk.sheets.Sheets;
import stillroom.desk.shell.Pages;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.HandOut;
import stillroom.formulary.formula.HandOut.LineWords;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.formula.Step;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.workshop.Workshop;

/** The recipe as a file: what it says is what the planner planned, in text that can be selected, in our own fonts. */
class RecipeSheetTest {
    private static final Map<String, Material> CARDS = Map.of(
            "water", Material.named("water", "Water, purified", Family.WATER),
            "glycerin", Material.named("glycerin", "Glycerin <b>", Family.HUMECTANT),
            "gum", Material.named("gum", "Xanthan gum", Family.THICKENER));
    private static final MaterialBook BOOK = new MaterialBook() {
        @Override
        public Optional<Material> material(String key) {
            return Optional.ofNullable(CARDS.get(key));
        }

        @Override
        public Optional<Substance> substance(String key) {
            return Optional.empty();
        }

        @Override
        public List<Material> materials() {
            return List.copyOf(CARDS.values());
        }

        @Override
        public List<Substance> substances() {
            return List.of();
        }
    };
    private static final Formula GEL = new Formula(List.of(
            new Phase(
                    "p1",
                    "Gum in glycerin",
                    List.of(
                            new Line("l1", "glycerin", Amount.fixed("5"), ""),
                            new Line("l2", "gum", Amount.fixed("0.333"), "")),
                    List.of(new Step(
                            "s1", "Wet the gum out.", Optional.empty(), "by hand", Optional.of(5.0), "no lumps", ""))),
            new Phase(
                    "p2",
                    "Water",
                    List.of(new Line("l3", "water", new Amount.ToHundred(), "")),
                    List.of(new Step("s2", "Pour in.", Optional.of(40.0), "", Optional.empty(), "", "Hot.")))));

    private static byte[] sheet() {
        Product product = new Product(1, "Gel of the test", Brief.of(ProductType.TONER), "");
        FormulaVersion version = new FormulaVersion(1, 3, 1, true, Optional.empty(), "", Instant.EPOCH, GEL, Map.of());
        HandOut words = new HandOut(
                Grams.of("150"),
                Grams.of("0.1"),
                Map.of("l1", new LineWords("keeps the gum from clumping", List.of("propanediol"), false)),
                false,
                false);
        LocalDate today = LocalDate.of(2026, 11, 25);
        RecipeSheet sheet = new RecipeSheet(Workshop.UNNAMED, product, version, BOOK, words);
        return Sheets.onOnePage(new Pages(), "recipes/recipe.jte", sheet.of(sheet.plan(Map.of(), today), today));
    }

    @Test
    void saysWhatWasPlannedInTextThatCanBeSelected() throws IOException {
        byte[] file = sheet();
        Files.createDirectories(Path.of("target"));
        Files.write(Path.of("target", "recipe-test.pdf"), file);
        try (PDDocument document = Loader.loadPDF(file)) {
            String text = new PDFTextStripper().getText(document);
            assertThat(text)
                    .contains(
                            "Gel of the test",
                            "Glycerin <b>",
                            "7.5",
                            "0.5",
                            "142.0",
                            "Look for: no lumps",
                            "40 °C",
                            "Caution: Hot.",
                            "keeps the gum from clumping",
                            "Or: propanediol")
                    .contains("0.333");
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            assertThat(document.getDocumentCatalog().getStructureTreeRoot()).isNotNull();
        }
    }

    @Test
    void embedsEveryFont() throws IOException {
        try (PDDocument document = Loader.loadPDF(sheet())) {
            int fonts = 0;
            for (var page : document.getPages()) {
                for (var name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                    fonts++;
                }
            }
            assertThat(fonts).isPositive();
        }
    }
}
