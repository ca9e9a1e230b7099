package stillroom.formulary.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.material.StarterLibrary;

class RuleTablesTest {
    private static final RuleBook BOOK = RuleTables.standard();
    private static final String HEAD = String.join(",", RuleRow.columns()) + "\n";

    private static List<Rule> all() {
        return BOOK.laws().values().stream()
                .flatMap(law -> law.rules().stream())
                .toList();
    }

    @Test
    void everyRowCitesASourceOfTheBibliography() throws IOException {
        Set<String> keys = Files.readAllLines(Path.of("../docs/sources.csv")).stream()
                .map(line -> line.substring(0, line.indexOf(',')))
                .collect(Collectors.toSet());
        assertThat(all()).hasSizeGreaterThan(300);
        assertThat(all())
                .allSatisfy(rule ->
                        assertThat(keys).as(rule.id()).contains(rule.citation().sourceKey()));
    }

    @Test
    void everyWarningThatARowDemandsHasAnEnglishWording() {
        assertThat(all().stream().flatMap(rule -> rule.demand().warnings().stream()))
                .isNotEmpty()
                .allSatisfy(key -> assertThat(BOOK.warning(key, "en")).as(key).isPresent());
    }

    /** 24 of the first 26 remain; with the extension of 2023 the export of 2026 has 81 (read), the oral-only entry 46 included. */
    @Test
    void allergenListsHaveTheirLength() {
        List<Rule> allergens = all().stream()
                .filter(rule -> rule.id().startsWith("eu-allergens-"))
                .toList();
        assertThat(allergens.stream().filter(rule -> rule.span().countsOn(LocalDate.of(2026, 7, 31))))
                .hasSize(24);
        assertThat(allergens.stream().filter(rule -> rule.span().countsOn(LocalDate.of(2026, 8, 1))))
                .hasSize(81);
    }

    @Test
    void everyAllergenOfTheLibraryIsInTheTable() {
        MarketLaw law = BOOK.law("EU").orElseThrow();
        LocalDate day = LocalDate.of(2026, 11, 25);
        assertThat(StarterLibrary.load().substances().stream()
                        .filter(substance -> substance.is("allergen-2003") || substance.is("allergen-2023")))
                .hasSizeGreaterThan(60)
                .allSatisfy(substance -> assertThat(law.naming(substance.key()))
                        .as(substance.key())
                        .anyMatch(rule ->
                                rule.kind() != Rule.Kind.GUIDANCE && rule.span().countsOn(day)));
    }

    @Test
    void everyPreservativeOfTheLibraryHasItsRow() {
        MarketLaw law = BOOK.law("EU").orElseThrow();
        assertThat(StarterLibrary.load().substances().stream()
                        .filter(substance -> substance.is("preservative-annex-v")))
                .hasSizeGreaterThan(40)
                .allSatisfy(substance -> assertThat(law.naming(substance.key()))
                        .as(substance.key())
                        .anyMatch(rule -> rule.table().equals("annex-v")));
    }

    @Test
    void productConditionsAreRead() {
        assertThat(Scope.productsOf(List.of("leave-on", "!lip-product")))
                .contains(ProductType.FACE_CREAM)
                .doesNotContain(ProductType.LIP_PRODUCT, ProductType.SHAMPOO);
        assertThat(Scope.productsOf(List.of())).hasSize(ProductType.values().length);
    }

    @Test
    void aFaultNamesFileAndLine() {
        String row = "1,,limit,x,y,,,,,%s,,,,,,,,,,,,,source,paragraph,,\n";
        assertThatThrownBy(() -> RuleTables.read("XX", "own", new StringReader(HEAD + String.format(row, "a lot"))))
                .hasMessageContaining("own, line 2")
                .hasMessageContaining("a lot");
        assertThatThrownBy(() -> RuleTables.read("XX", "own", new StringReader(HEAD + String.format(row, "101"))))
                .hasMessageContaining("own, line 2");
        assertThatThrownBy(() -> RuleTables.read(
                        "XX", "own", new StringReader(HEAD + String.format(row, "1") + String.format(row, "2"))))
                .hasMessageContaining("own, line 3")
                .hasMessageContaining("xx-own-1");
        assertThatThrownBy(() -> RuleTables.read("XX", "own", new StringReader("entry,colour\n")))
                .hasMessageContaining("colour");
    }
}
