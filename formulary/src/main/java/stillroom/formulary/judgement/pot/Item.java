package stillroom.formulary.judgement.pot;

import java.util.Optional;
import stillroom.formulary.evaluation.Portion;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;

/** A portion with its card, where there is one. */
public record Item(Portion portion, Optional<Material> material) {
    public String name() {
        return material.map(Material::name).orElse(portion.materialKey());
    }

    public boolean is(Family family) {
        return material.map(card -> card.family() == family).orElse(false);
    }
}
