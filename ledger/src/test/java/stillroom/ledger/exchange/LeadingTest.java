package stillroom.ledger.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.Evaluator;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.StarterLibrary;

class LeadingTest {
    private static final Catalogue CATALOGUE = new Catalogue(StarterLibrary.load(), Map.of("Water", "Aqua"));
    private static final Evaluator EVALUATOR = Evaluator.standard();
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private static ReadyFormula lead(String text) {
        Reading reading = FormulaFileReader.read(text);
        assertThat(reading.problems()).isEmpty();
        return Leading.lead(reading.file().orElseThrow(), CATALOGUE);
    }

    private static ReadyFormula line(String line) {
        return lead("{\"brief\": {\"type\": \"toner\"}, \"lines\": [" + line.replace('\'', '"') + "]}");
    }

    private static Evaluation evaluate(ReadyFormula ready) {
        return EVALUATOR.evaluate(ready.subject(ready.file().brief()), ready.book(), DAY);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\0',
            value = {
                "{'material':'glycerin-99','percent':3} | glycerin-99",
                "{'material':'Glycerin-99','percent':3} | glycerin-99",
                "{'material':'Glycerin, vegetable, 99.5 %','percent':3} | glycerin-99",
                "{'inci':'GLYCERIN','percent':3} | glycerin-99",
                "{'material':'glycerin','percent':3} | glycerin-99",
                "{'cas':'56-81-5','percent':3} | glycerin-99",
                "{'inci':'aqua','percent':3} | water-purified",
                "{'inci':'Water','percent':3} | water-purified",
                "{'inci':'Aqua (Water)','percent':3} | water-purified",
                "{'inci':'Aqua/Water','percent':3} | water-purified",
                "{'inci':'Sodium Benzoate','percent':3} | sodium-benzoate",
                "{'inci':'Phenoxyethanol','percent':3} | phenoxyethanol",
                "{'inci':'Aloe Barbadensis Leaf Juice','percent':3} | aloe-juice",
                "{'inci':'Glyceryl Stearate SE','percent':3} | glyceryl-stearate-se",
                "{'inci':'Sodium Laureth Sulfate','percent':3} | pure-sodium-laureth-sulfate"
            })
    void aNameLeadsToTheCard(String line, String key) {
        assertThat(line(line).formula().lines().get(0).materialKey()).isEqualTo(key);
    }

    @Test
    void aSubstanceSoldInSolutionIsPureAndThatIsSaid() {
        ReadyFormula ready = line("{'inci':'Sodium Laureth Sulfate','percent':3}");
        assertThat(ready.found()).singleElement().satisfies(finding -> {
            assertThat(finding.rule()).isEqualTo("file.taken-as-pure");
            assertThat(finding.mend()).contains("sles-70");
        });
        assertThat(evaluate(ready)
                        .composition()
                        .share("sodium-laureth-sulfate")
                        .orElseThrow()
                        .asAdded()
                        .nominal())
                .isEqualTo(0.03);
    }

    @Test
    void aMoistPowderIsNotSaidToBeASolution() {
        assertThat(line("{'inci':'Xanthan Gum','percent':0.3}").found()).isEmpty();
        assertThat(line("{'inci':'Disodium EDTA','percent':0.1}").found()).isEmpty();
    }

    @Test
    void aColourIndexNumberStandsOnTheShelfOfColourants() {
        ReadyFormula ready = line("{'inci':'CI 15510','percent':1}");
        String key = ready.formula().lines().get(0).materialKey();
        assertThat(ready.book().material(key).orElseThrow().family()).isEqualTo(Family.COLOURANT);
    }

    @Test
    void whatIsKnownNowhereCannotBeJudged() {
        Evaluation evaluation = evaluate(line("{'inci':'Unheard Of Extract','percent':3}"));
        assertThat(evaluation.findings()).anySatisfy(finding -> {
            assertThat(finding.kind()).isEqualTo(Finding.Kind.CANNOT_JUDGE);
            assertThat(finding.says()).isEqualTo("No composition for Unheard Of Extract.");
        });
    }

    @Test
    void ownMaterialsArePremixesOfPremixes() throws java.io.IOException {
        ReadyFormula ready = lead(Files.readString(Path.of("..", "docs", "examples", "own-materials.json")));
        Evaluation evaluation = evaluate(ready);
        assertThat(evaluation
                        .composition()
                        .share("sodium-benzoate")
                        .orElseThrow()
                        .asAdded()
                        .upper())
                .isCloseTo(0.012 * 0.31, org.assertj.core.data.Offset.offset(1e-12));
        double inCard = CATALOGUE.book().material("glycerin-99").orElseThrow().composition().stream()
                .filter(part -> part.substance().equals("glycerin"))
                .mapToDouble(part -> part.massFraction().nominal())
                .sum();
        assertThat(inCard).isBetween(0.99, 1.0);
        assertThat(evaluation
                        .composition()
                        .share("glycerin")
                        .orElseThrow()
                        .asAdded()
                        .nominal())
                .isCloseTo(0.04 * 0.5 * inCard, org.assertj.core.data.Offset.offset(1e-12));
        assertThat(evaluation.composition().unknown()).containsExactly("new-extract");
    }

    @Test
    void whatACardLeavesOpenIsSaid() {
        ReadyFormula ready = lead(
                "{\"brief\":{\"type\":\"toner\"},\"lines\":[{\"material\":\"mine\",\"percent\":100}],\"materials\":[{\"key\":\"mine\",\"composition\":[{\"inci\":\"Aqua\",\"percent\":60}]}]}");
        assertThat(ready.found()).extracting(Finding::rule).containsExactly("file.composition-rest");
        assertThat(ready.found().get(0).kind()).isEqualTo(Finding.Kind.CANNOT_JUDGE);
    }

    @Test
    void theFilesOwnCardStandsBeforeTheLibrarys() {
        ReadyFormula ready = lead(
                "{\"brief\":{\"type\":\"toner\"},\"lines\":[{\"material\":\"glycerin-99\",\"percent\":100}],\"materials\":[{\"key\":\"glycerin-99\",\"composition\":[{\"inci\":\"Aqua\",\"percent\":100}]}]}");
        assertThat(evaluate(ready).composition().shares())
                .extracting(one -> one.substance())
                .isEqualTo(List.of("water"));
    }
}
