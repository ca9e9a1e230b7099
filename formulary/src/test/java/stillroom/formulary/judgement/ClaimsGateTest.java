package stillroom.formulary.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.judgement.claim.ClaimsGate;

/** The kinds of claim that the gate knows; which law governs them is from memory. */
class ClaimsGateTest {
    private final ClaimsGate gate = new ClaimsGate(Bench.EVALUATOR.rules());

    private static Brief saying(String claim, String market) {
        return new Brief(
                ProductType.FACE_CREAM,
                Set.of(Brief.People.ADULTS),
                "face",
                "light",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(claim),
                "",
                market);
    }

    @ParameterizedTest
    @CsvSource({
        "SPF 30, EU, claims.sun-protection",
        "UVA and UVB protection, EU, claims.sun-protection",
        "Fights acne, US, claims.acne",
        "Soothes eczema, UK, claims.skin-disease",
        "Hand sanitiser, EU, claims.antibacterial",
        "Repels insects, EU, claims.insects",
        "Anti-dandruff, US, claims.dandruff",
        "Longer lashes, EU, claims.lash",
        "Promotes hair growth, EU, claims.hair-growth",
        "For open wounds, EU, claims.wound"
    })
    void governedClaimsCloseTheGate(String claim, String market, String id) {
        ClaimsGate.Verdict verdict = gate.judge(saying(claim, market));
        assertThat(verdict.governed()).extracting(hit -> hit.claim().id()).contains(id);
        assertThat(verdict.blocksPublicRecipe()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "Softens the skin, EU",
        "Calming after sun lotion, EU",
        "Smooths hair, US",
        "For eyelashes too, EU",
        "Anti-dandruff, EU",
        "A treat for dry hands, EU",
        "Transparent, EU"
    })
    void ordinaryClaimsPass(String claim, String market) {
        assertThat(gate.judge(saying(claim, market)).hits()).isEmpty();
    }

    /** What the brief calls governed by another law weighs the same beside the formula. */
    @Test
    void aGovernedClaimWeighsAsMuchBesideTheFormulaAsInTheBrief() {
        Evaluation evaluation = Bench.book()
                .judge(saying("SPF 30, hypoallergenic", "EU"), Bench.TODAY, "water", "q.s.", "glycerin", "5");
        assertThat(evaluation.findings().stream()
                        .filter(finding -> finding.rule().startsWith("claims."))
                        .map(Finding::kind))
                .containsExactly(Finding.Kind.BREACH, Finding.Kind.LOOK_AT_THIS);
        assertThat(evaluation.warnings()).extracting(Finding::rule).contains("claims.sun-protection");
    }

    @ParameterizedTest
    @CsvSource({"Free from parabens, EU", "Hypoallergenic, EU", "Dermatologist tested, UK"})
    void claimsThatNeedEvidenceAskForItAndDoNotBlock(String claim, String market) {
        ClaimsGate.Verdict verdict = gate.judge(saying(claim, market));
        assertThat(verdict.hits()).isNotEmpty();
        assertThat(verdict.blocksPublicRecipe()).isFalse();
    }
}
