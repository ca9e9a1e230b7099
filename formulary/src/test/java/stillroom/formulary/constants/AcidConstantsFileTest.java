package stillroom.formulary.constants;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A wrong row is refused with the file's name and its line. */
class AcidConstantsFileTest {

    private static final String HEAD = "key,name,cas,charge_fully_protonated,pka,enthalpy_kj_mol,heat_capacity_j_mol_k,"
            + "molar_mass_g_mol,free_acid_solubility_g_kg,solubility_celsius,note,reference,status\n";
    private static final String GOOD = "a,acid a,1-2-3,0,4.5;6,1;?,,100,,,,a book,read\n";

    @Test
    void readsARow() {
        AcidConstant row = AcidConstantsFile.read("own.csv", new StringReader(HEAD + GOOD))
                .find("a")
                .orElseThrow();
        assertThat(row.steps()).hasSize(2);
        assertThat(row.steps().get(0).enthalpyKJPerMol()).isEqualTo(1);
        assertThat(row.enthalpiesKnown()).isFalse();
        assertThat(row.system().chargeBare()).isEqualTo(-2);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "b,acid b,1-2-3,0,x,,,100,,,,a book,read|x",
                "b,acid b,1-2-3,0,4,1;2,,100,,,,a book,read|2 enthalpies for 1 pKa",
                "b,acid b,1-2-3,0,4,,,-1,,,,a book,read|not above 0",
                "b,acid b,1-2-3,0,4,,,100,,,,,read|reference",
                "b,acid b,1-2-3,0,4,,,100,,,,a book,perhaps|perhaps",
                "a,acid a,1-2-3,0,4,,,100,,,,a book,read|twice"
            })
    void refusesAWrongRow(String line, String reason) {
        assertThatThrownBy(() -> AcidConstantsFile.read("own.csv", new StringReader(HEAD + GOOD + line + "\n")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("own.csv, line 3")
                .hasMessageContaining(reason);
    }
}
