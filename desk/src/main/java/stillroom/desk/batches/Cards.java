package stillroom.desk.batches;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stillroom.formulary.judgement.pot.Opened;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;

/** How materials are called on the pages of a batch: by the maker's name and by INCI name. */
public record Cards(MaterialBook book) {
    public String name(String materialKey) {
        return book.material(materialKey).map(Material::name).orElse(materialKey);
    }

    /** INCI names of what was put into the material on purpose; empty where its composition is not known. */
    public String inci(String materialKey) {
        return book.material(materialKey).map(this::inci).orElse("");
    }

    private String inci(Material card) {
        return Opened.parts(Optional.of(card), book).stream()
                .filter(part -> part.role() == Constituent.Role.INGREDIENT)
                .map(part -> book.substance(part.substance())
                        .map(Substance::inciName)
                        .orElse(part.substance()))
                .distinct()
                .collect(Collectors.joining(", "));
    }

    /** A sentence that names materials by their keys, with their names in place of these. */
    public String named(String sentence, List<String> keys) {
        String said = sentence;
        List<String> longestFirst = keys.stream()
                .sorted(Comparator.comparing(String::length).reversed())
                .toList();
        for (String key : longestFirst) {
            said = said.replace(key, name(key));
        }
        return said;
    }

    public List<String> cautions(String materialKey) {
        return card(materialKey).map(Material::cautions).orElse(List.of());
    }

    public Optional<Material> card(String materialKey) {
        return book.material(materialKey);
    }
}
