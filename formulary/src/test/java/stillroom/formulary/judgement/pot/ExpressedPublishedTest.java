package stillroom.formulary.judgement.pot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.StarterLibrary;

/** Salts and esters expressed as acid, alcohol or ion; factors recomputed from IUPAC 2021 conventional atomic weights. */
class ExpressedPublishedTest {
    private static final MaterialBook LIBRARY = StarterLibrary.load();

    @ParameterizedTest
    @CsvSource({
        "sodium-benzoate, benzoic-acid, 0.84746",
        "potassium-benzoate, benzoic-acid, 0.76225",
        "potassium-sorbate, sorbic-acid, 0.74644",
        "sodium-salicylate, salicylic-acid, 0.86270",
        "sodium-dehydroacetate, dehydroacetic-acid, 0.88438",
        "methylparaben, 4-hydroxybenzoic-acid, 0.90781",
        "ethylparaben, 4-hydroxybenzoic-acid, 0.83118",
        "propylparaben, 4-hydroxybenzoic-acid, 0.76648",
        "butylparaben, 4-hydroxybenzoic-acid, 0.71113",
        "sodium-methylparaben, 4-hydroxybenzoic-acid, 0.79321",
        "sodium-lactate, lactic-acid, 0.80384",
        "retinyl-palmitate, retinol, 0.54577",
        "retinyl-acetate, retinol, 0.87203",
        "sodium-ascorbate, ascorbic-acid, 0.88904"
    })
    void asAcidOrAlcohol(String substance, String other, double factor) {
        assertThat(Expressed.as(LIBRARY.substance(substance).orElseThrow(), other, LIBRARY)
                        .orElseThrow())
                .isEqualTo(factor, within(5e-5));
    }

    /** 22.990 / 144.105, 39.098 / 150.218 and 40.078 / 186.220. */
    @ParameterizedTest
    @CsvSource({"sodium-benzoate, 0.15954", "potassium-sorbate, 0.26028", "calcium-propionate, 0.21522"})
    void asIon(String substance, double factor) {
        assertThat(Expressed.asIon(LIBRARY.substance(substance).orElseThrow()).orElseThrow())
                .isEqualTo(factor, within(5e-5));
    }

    @Test
    void whatLeadsNowhereIsNotKnown() {
        assertThat(Expressed.as(LIBRARY.substance("sodium-benzoate").orElseThrow(), "sorbic-acid", LIBRARY))
                .isEmpty();
        assertThat(Expressed.as(LIBRARY.substance("carbomer").orElseThrow(), "benzoic-acid", LIBRARY))
                .isEmpty();
    }
}
