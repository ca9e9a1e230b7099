package stillroom.formulary.judgement;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;

/**
 * Cards and substances that a formula of the test resources brings along, over the starter library:
 * {@code card: key family part=percent part=low/middle/high}, where a part is a substance or {@code material:key} and a
 * part in brackets is an impurity; {@code substance: key INCI_Name charge tag tag}.
 */
final class OwnCards implements MaterialBook {
    private final MaterialBook library;
    private final Map<String, Material> cards = new LinkedHashMap<>();
    private final Map<String, Substance> substances = new LinkedHashMap<>();

    private OwnCards(MaterialBook library) {
        this.library = library;
    }

    static MaterialBook over(MaterialBook library, List<String> lines) {
        OwnCards own = new OwnCards(library);
        for (String line : lines) {
            String[] words = line.substring(line.indexOf(' ') + 1).split("\\s+");
            if (line.startsWith("card:")) {
                own.card(words);
            } else {
                own.substance(words);
            }
        }
        return own;
    }

    private void card(String[] words) {
        List<Constituent> parts = new ArrayList<>();
        for (int i = 2; i < words.length; i++) {
            boolean impurity = words[i].startsWith("(");
            String word = impurity ? words[i].substring(1, words[i].length() - 1) : words[i];
            String[] range = word.substring(word.indexOf('=') + 1).split("/");
            parts.add(new Constituent(
                    word.substring(0, word.indexOf('=')),
                    new MassFraction(
                            fraction(range[0]), fraction(range[range.length / 2]), fraction(range[range.length - 1])),
                    impurity ? Constituent.Role.IMPURITY : Constituent.Role.INGREDIENT));
        }
        Family family = Family.valueOf(words[1].toUpperCase(Locale.ROOT));
        cards.put(
                words[0],
                Material.named(words[0], words[0], family).withComposition(parts.toArray(new Constituent[0])));
    }

    private static double fraction(String percent) {
        return Double.parseDouble(percent) / 100;
    }

    private void substance(String[] words) {
        ChargeClass charge = ChargeClass.valueOf(words[2].toUpperCase(Locale.ROOT));
        substances.put(
                words[0],
                new Substance(
                        words[0],
                        words[1].replace('_', ' '),
                        List.of(),
                        Optional.empty(),
                        charge,
                        false,
                        Optional.empty(),
                        List.of(words).subList(3, words.length),
                        "hand-made for this test"));
    }

    @Override
    public Optional<Material> material(String key) {
        return Optional.ofNullable(cards.get(key)).or(() -> library.material(key));
    }

    @Override
    public Optional<Substance> substance(String key) {
        return Optional.ofNullable(substances.get(key)).or(() -> library.substance(key));
    }

    @Override
    public List<Material> materials() {
        List<Material> all = new ArrayList<>(cards.values());
        all.addAll(library.materials());
        return all;
    }

    @Override
    public List<Substance> substances() {
        List<Substance> all = new ArrayList<>(substances.values());
        all.addAll(library.substances());
        return all;
    }
}
