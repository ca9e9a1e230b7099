package stillroom.formulary.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.util.List;
import org.junit.jupiter.api.Test;
import stillroom.formulary.reference.ReferenceFault;
import stillroom.formulary.reference.ReferenceRow;
import stillroom.formulary.reference.ReferenceTable;

/** Tables with one fault each: file, line and column must be named, as the reader has only the message. */
class StarterLibraryFaultTest {
    private static final String SUBSTANCES = header(SubstanceTable.COLUMNS)
            + "water,Aqua,7732-18-5,18.015,none,no,,,,,,,,,,,solvent,from memory\n"
            + "salt,Sodium Chloride,7647-14-5,58.44,none,no,,,,,,,,,,,electrolyte,from memory\n";
    private static final String MATERIALS =
            header(StarterLibrary.MATERIAL_COLUMNS) + "brine,2026-11-25,Brine,salt,electrolyte,,,,from memory\n";
    private static final String COMPOSITIONS = header(CompositionTable.COLUMNS)
            + "brine,salt,20,20,20,ingredient,from memory\n"
            + "brine,water,80,80,80,ingredient,from memory\n";
    private static final String FACTS =
            header(FactTable.COLUMNS) + "brine,usage-percent,1,5,,,\"common practice, no source\"\n";

    @Test
    void soundTablesGiveTheCard() {
        Material brine = library(SUBSTANCES, MATERIALS, COMPOSITIONS, FACTS)
                .material("brine")
                .orElseThrow();
        assertThat(brine.composition()).hasSize(2);
        assertThat(brine.usage().orElseThrow().high()).hasToString("5");
        assertThat(brine.sources())
                .containsEntry("usage", "common practice, no source")
                .containsEntry("composition", "from memory");
    }

    @Test
    void unknownColumn() {
        refused(
                SUBSTANCES.replace(",tags,", ",labels,"),
                MATERIALS,
                COMPOSITIONS,
                FACTS,
                "substances.csv",
                1,
                "unknown column \"labels\"");
    }

    @Test
    void columnsInAnotherOrder() {
        refused(
                SUBSTANCES,
                MATERIALS,
                COMPOSITIONS,
                FACTS.replace("lower,upper", "upper,lower"),
                "facts.csv",
                1,
                "columns must be material_key,fact,lower,upper");
    }

    @Test
    void rowWithoutSource() {
        refused(
                SUBSTANCES,
                MATERIALS,
                COMPOSITIONS.replace("80,ingredient,from memory", "80,ingredient,"),
                FACTS,
                "compositions.csv",
                3,
                "\"source\" is empty");
        refused(
                SUBSTANCES,
                MATERIALS,
                COMPOSITIONS,
                FACTS.replace("\"common practice, no source\"", ""),
                "facts.csv",
                2,
                "\"source\" is empty");
        refused(
                SUBSTANCES.replace("solvent,from memory", "solvent,"),
                MATERIALS,
                COMPOSITIONS,
                FACTS,
                "substances.csv",
                2,
                "\"source\" is empty");
    }

    @Test
    void unknownSubstance() {
        refused(
                SUBSTANCES,
                MATERIALS,
                COMPOSITIONS.replace("brine,salt", "brine,sugar"),
                FACTS,
                "compositions.csv",
                2,
                "sugar is not in substances.csv");
    }

    @Test
    void factOfAMaterialWithoutCard() {
        refused(
                SUBSTANCES,
                MATERIALS,
                COMPOSITIONS,
                FACTS.replace("brine", "broth"),
                "facts.csv",
                2,
                "broth has no card");
    }

    @Test
    void badNumber() {
        refused(
                SUBSTANCES.replace("58.44", "58;44"),
                MATERIALS,
                COMPOSITIONS,
                FACTS,
                "substances.csv",
                3,
                "\"58;44\" in \"molar_mass_g_per_mol\" is not a number");
        refused(
                SUBSTANCES,
                MATERIALS,
                COMPOSITIONS,
                FACTS.replace(",1,5,", ",5,1,"),
                "facts.csv",
                2,
                "range 5 to 1 % runs downwards");
        refused(
                SUBSTANCES,
                MATERIALS,
                COMPOSITIONS.replace("80,80,80", "80,80,180"),
                FACTS,
                "compositions.csv",
                3,
                "must ascend within 0 to 100");
        refused(
                SUBSTANCES,
                MATERIALS,
                COMPOSITIONS,
                FACTS.replace(",1,5,", ",1,,"),
                "facts.csv",
                2,
                "\"upper\" is empty");
    }

    @Test
    void wordOutsideAClosedSet() {
        refused(
                SUBSTANCES,
                MATERIALS.replace(",salt,", ",salts,"),
                COMPOSITIONS,
                FACTS,
                "materials.csv",
                2,
                "\"salts\" in \"family\" is not one of the known words");
    }

    @Test
    void rowTooShort() {
        refused(
                SUBSTANCES,
                MATERIALS,
                COMPOSITIONS,
                FACTS + "brine,own-ph,5\n",
                "facts.csv",
                3,
                "3 fields where the header has 7");
    }

    @Test
    void cardOrFactTwice() {
        refused(
                SUBSTANCES,
                MATERIALS + MATERIALS.lines().skip(1).findFirst().orElseThrow() + "\n",
                COMPOSITIONS,
                FACTS,
                "materials.csv",
                3,
                "brine appears twice");
        refused(
                SUBSTANCES,
                MATERIALS,
                COMPOSITIONS,
                FACTS + "brine,usage-percent,1,2,,,from memory\n",
                "facts.csv",
                3,
                "usage-percent of brine appears twice");
    }

    @Test
    void parentThatIsNoSubstance() {
        refused(
                SUBSTANCES.replace("58.44,none,no,,,,,,,", "58.44,none,no,,,brine-acid,1,sodium,1,"),
                MATERIALS,
                COMPOSITIONS,
                FACTS,
                "substances.csv",
                3,
                "parent brine-acid is not a known substance");
    }

    @Test
    void tableThatIsNotInTheJar() {
        assertThatThrownBy(() -> ReferenceTable.read("materials/none.csv", "key"))
                .isInstanceOf(ReferenceFault.class)
                .hasMessageContaining("materials/none.csv");
    }

    private static void refused(
            String substances,
            String materials,
            String compositions,
            String facts,
            String file,
            int line,
            String fault) {
        assertThatThrownBy(() -> library(substances, materials, compositions, facts))
                .isInstanceOf(ReferenceFault.class)
                .hasMessageStartingWith(file + ", line " + line + ": ")
                .hasMessageContaining(fault);
    }

    private static StarterLibrary library(String substances, String materials, String compositions, String facts) {
        return StarterLibrary.of(
                rows("substances.csv", substances, SubstanceTable.COLUMNS),
                rows("materials.csv", materials, StarterLibrary.MATERIAL_COLUMNS),
                rows("compositions.csv", compositions, CompositionTable.COLUMNS),
                rows("facts.csv", facts, FactTable.COLUMNS));
    }

    private static List<ReferenceRow> rows(String file, String text, String[] columns) {
        return ReferenceTable.parse(file, new StringReader(text), columns);
    }

    private static String header(String[] columns) {
        return String.join(",", columns) + "\n";
    }
}
