package stillroom.formulary.judgement.pot;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.evaluation.Portion;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;

/** A portion with its card, where there is one. */
public record Item(Portion portion, Optional<Material> material) {
    /** Material keys as the names that stand on their lines; a card inside a card keeps its key. */
    static List<String> names(List<Item> items, List<String> keys) {
        return keys.stream()
                .map(key -> items.stream()
                        .filter(item -> item.portion().materialKey().equals(key))
                        .findFirst()
                        .map(Item::name)
                        .orElse(key))
                .toList();
    }

    public String name() {
        return material.map(Material::name).orElse(portion.materialKey());
    }

    public boolean is(Family family) {
        return material.map(card -> card.family() == family).orElse(false);
    }
}
