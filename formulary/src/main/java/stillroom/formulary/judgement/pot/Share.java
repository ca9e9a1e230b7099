package stillroom.formulary.judgement.pot;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.evaluation.SubstanceShare;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.Constituent.Role;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.Substance;

/** A substance's share with what is known of the substance. */
public record Share(SubstanceShare share, Optional<Substance> substance) {
    public String key() {
        return share.substance();
    }

    public String name() {
        return substance.map(Substance::inciName).orElse(share.substance());
    }

    public List<String> lines() {
        return share.lines();
    }

    /** In the pot, evaporation included. */
    public MassFraction amount() {
        return share.inThePot();
    }

    public double nominal() {
        return share.inThePot().nominal();
    }

    public boolean is(String tag) {
        return substance.map(known -> known.is(tag)).orElse(false);
    }

    public boolean isSurfactant(ChargeClass charge) {
        return substance
                .map(known -> known.surfactant() && known.charge() == charge)
                .orElse(false);
    }

    public boolean hasCharge(ChargeClass charge) {
        return substance.map(known -> known.charge() == charge).orElse(false);
    }

    public boolean isIngredient() {
        return share.role() == Role.INGREDIENT;
    }

    public boolean isWater() {
        return Pot.isWater(key());
    }
}
