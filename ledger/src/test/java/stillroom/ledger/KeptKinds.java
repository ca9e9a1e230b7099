package stillroom.ledger;

import java.util.Map;
import java.util.TreeMap;
import stillroom.formulary.batch.CostSheet;
import stillroom.formulary.formula.HandOut;
import stillroom.formulary.hygiene.Cleaning;
import stillroom.formulary.hygiene.HoldLimits;
import stillroom.formulary.hygiene.Tool;
import stillroom.formulary.judgement.safety.OwnExposure;
import stillroom.formulary.judgement.safety.SafetyInput;
import stillroom.formulary.material.Paper;
import stillroom.formulary.material.WaterLot;
import stillroom.formulary.pack.Pack;
import stillroom.formulary.pack.PackCount;
import stillroom.formulary.pack.PackLot;
import stillroom.formulary.plan.ClassOf;
import stillroom.formulary.plan.PremixRecipe;
import stillroom.formulary.plan.Tolerances;
import stillroom.formulary.trial.TrialSet;
import stillroom.formulary.trial.ViscosityCurve;
import stillroom.ledger.imports.NameChoice;

/** The records that lie in drawers, and those that are added as they happen, by kind. */
public final class KeptKinds {
    private KeptKinds() {}

    public static Map<String, Class<? extends Record>> drawers() {
        Map<String, Class<? extends Record>> kinds = new TreeMap<>();
        kinds.put("class", ClassOf.class);
        kinds.put("cost", CostSheet.class);
        kinds.put("hand-out", HandOut.class);
        kinds.put("hold-times", HoldLimits.class);
        kinds.put("import-name", NameChoice.class);
        kinds.put("own-exposure", OwnExposure.class);
        kinds.put("pack", Pack.class);
        kinds.put("pack-lot", PackLot.class);
        kinds.put("paper", Paper.class);
        kinds.put("premix-recipe", PremixRecipe.class);
        kinds.put("safety-input", SafetyInput.class);
        kinds.put("tolerances", Tolerances.class);
        kinds.put("tool", Tool.class);
        kinds.put("trial-set", TrialSet.class);
        kinds.put("viscosity-curve", ViscosityCurve.class);
        kinds.put("water-lot", WaterLot.class);
        return kinds;
    }

    public static Map<String, Class<? extends Record>> happenings() {
        return new TreeMap<>(Map.of("pack-lot", PackCount.class, "tool", Cleaning.class));
    }
}
