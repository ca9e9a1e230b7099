package stillroom.formulary.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class StarterLibraryTest {
    private static final StarterLibrary LIBRARY = StarterLibrary.load();

    /** Capitals that are no trade name: places, and short forms of the trade. */
    private static final Set<String> KNOWN_CAPITALS = Set.of(
            "CI",
            "MEA",
            "DEA",
            "PEG",
            "EDTA",
            "PCA",
            "IU",
            "Virginian",
            "East",
            "Indian",
            "Arginine",
            "Hexanediol",
            "D",
            "DL",
            "L");

    @Test
    void holdsWhatASmallMakerMeetsOnEachShelf() {
        Map<Family, Long> counts =
                LIBRARY.materials().stream().collect(Collectors.groupingBy(Material::family, Collectors.counting()));
        assertThat(LIBRARY.materials()).hasSizeGreaterThanOrEqualTo(130);
        assertThat(counts.keySet()).containsExactlyInAnyOrder(Family.values());
        assertThat(counts.get(Family.SURFACTANT)).isGreaterThanOrEqualTo(30);
        assertThat(counts.get(Family.PRESERVATIVE)).isGreaterThanOrEqualTo(20);
        assertThat(counts.get(Family.EMULSIFIER)).isGreaterThanOrEqualTo(20);
        assertThat(counts.get(Family.FRAGRANCE)).isGreaterThanOrEqualTo(20);
        assertThat(counts.get(Family.OIL)).isGreaterThanOrEqualTo(20);
    }

    @Test
    void holdsSurfactantsOfAllFourCharges() {
        assertThat(withMain(ChargeClass.ANIONIC)).isGreaterThanOrEqualTo(15);
        assertThat(withMain(ChargeClass.AMPHOTERIC)).isGreaterThanOrEqualTo(6);
        assertThat(withMain(ChargeClass.NONIONIC)).isGreaterThanOrEqualTo(20);
        assertThat(withMain(ChargeClass.CATIONIC)).isGreaterThanOrEqualTo(4);
    }

    @Test
    void eachCompositionAddsUp() {
        for (Material material : LIBRARY.materials()) {
            assertThat(sum(material, MassFraction::nominal)).as(material.key()).isCloseTo(1, within(1e-9));
            assertThat(sum(material, MassFraction::lower)).as(material.key()).isLessThan(1 + 1e-9);
            assertThat(sum(material, MassFraction::upper)).as(material.key()).isGreaterThan(1 - 1e-9);
        }
    }

    @Test
    void noConstituentStandsTwiceInAMaterial() {
        for (Material material : LIBRARY.materials()) {
            List<String> names =
                    material.composition().stream().map(Constituent::substance).toList();
            assertThat(names).as(material.key()).isNotEmpty().doesNotHaveDuplicates();
        }
    }

    @Test
    void eachCasNumberHasItsCheckDigit() {
        int checked = 0;
        for (Substance substance : LIBRARY.substances()) {
            for (String cas : substance.casNumbers()) {
                assertThat(cas).as(substance.key()).matches("[1-9]\\d{1,6}-\\d{2}-\\d");
                assertThat(checkDigit(cas)).as(substance.key() + " " + cas).isEqualTo(cas.charAt(cas.length() - 1));
                checked++;
            }
        }
        assertThat(checked).isGreaterThan(500);
    }

    @Test
    void keysAreLowerCaseWithHyphens() {
        assertThat(LIBRARY.materials()).allSatisfy(m -> assertThat(m.key()).matches("[a-z0-9]+(-[a-z0-9]+)*"));
        assertThat(LIBRARY.substances()).allSatisfy(s -> assertThat(s.key()).matches("[a-z0-9]+(-[a-z0-9]+)*"));
    }

    @Test
    void tagsAreThoseOfTheDocumentedList() throws IOException {
        Set<String> documented = documentedTags();
        Set<String> used = new HashSet<>();
        LIBRARY.substances().forEach(s -> used.addAll(s.tags()));
        assertThat(used).isEqualTo(documented);
    }

    @Test
    void eachIonicSurfactantSaysItsChargeOrIsAKnownGap() {
        List<String> silent = LIBRARY.substances().stream()
                .filter(s -> s.charge() == ChargeClass.ANIONIC || s.charge() == ChargeClass.CATIONIC)
                .filter(s -> s.surfactant() && s.chargeMolPerKilogram().isEmpty())
                .filter(s -> !s.is("amine"))
                .map(Substance::key)
                .toList();
        assertThat(silent)
                .containsExactlyInAnyOrder(
                        "sodium-lauryl-glucose-carboxylate",
                        "sodium-palmate",
                        "dipalmitoylethyl-hydroxyethylmonium-methosulfate",
                        "sodium-lauroyl-lactylate");
    }

    @Test
    void saltsHaveAParentMassOfTheirOwn() {
        for (Substance substance : LIBRARY.substances()) {
            substance.parent().ifPresent(parent -> {
                Substance counted = LIBRARY.substance(parent.substance()).orElseThrow();
                double share = parent.units()
                        * counted.molarMassGramsPerMol().orElseThrow()
                        / substance.molarMassGramsPerMol().orElseThrow();
                assertThat(share).as(substance.key()).isBetween(0.3, 1.11);
                assertThat(counted.parent())
                        .as(counted.key() + " is itself a salt")
                        .isEmpty();
            });
        }
    }

    @Test
    void namesCarryNoTradeMark() {
        Pattern mark = Pattern.compile("[®™©]|\\((?i:r|tm|c)\\)");
        for (Material material : LIBRARY.materials()) {
            String words = material.name() + material.note() + material.solubility() + material.functions();
            assertThat(mark.matcher(words).find()).as(words).isFalse();
            assertThat(strangeCapitals(material.name())).as(material.name()).isEmpty();
            assertThat(material.supplier() + material.grade()).isEmpty();
            assertThat(material.price()).isEmpty();
        }
    }

    private static List<String> strangeCapitals(String name) {
        return Arrays.stream(name.split("[ ,:()/-]+"))
                .skip(1)
                .filter(word -> !word.isEmpty() && Character.isUpperCase(word.charAt(0)))
                .filter(word -> word.chars().noneMatch(Character::isDigit))
                .filter(word -> !KNOWN_CAPITALS.contains(word))
                .toList();
    }

    private static long withMain(ChargeClass charge) {
        return LIBRARY.materials().stream()
                .filter(m -> m.composition().stream()
                        .filter(c -> c.role() == Constituent.Role.INGREDIENT
                                && c.massFraction().nominal() > 0.05)
                        .map(c -> LIBRARY.substance(c.substance()).orElseThrow())
                        .anyMatch(s -> s.surfactant() && s.charge() == charge))
                .count();
    }

    private static double sum(Material material, ToDoubleFunction<MassFraction> end) {
        return material.composition().stream()
                .mapToDouble(c -> end.applyAsDouble(c.massFraction()))
                .sum();
    }

    /** Digits from the right, each times its place, modulo 10: the rule of the Chemical Abstracts Service. */
    private static char checkDigit(String cas) {
        String digits = cas.substring(0, cas.length() - 2).replace("-", "");
        int sum = 0;
        for (int place = 1; place <= digits.length(); place++) {
            sum += place * (digits.charAt(digits.length() - place) - '0');
        }
        return (char) ('0' + sum % 10);
    }

    private static Set<String> documentedTags() throws IOException {
        try (var stream = StarterLibrary.class.getResourceAsStream("/reference/materials/README.md")) {
            String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
            String list = text.substring(text.indexOf("### Tags") + 8, text.indexOf("| tag |"));
            return Arrays.stream(list.split(",")).map(String::strip).collect(Collectors.toSet());
        }
    }
}
