package stillroom.formulary.judgement.safety;

import java.util.Map;
import java.util.Optional;

/**
 * All that was entered for an assessor's table.
 *
 * @param bySubstance by key of the substance
 * @param exposure to the product, in place of the tabled one
 */
public record SafetyInputs(Map<String, SafetyInput> bySubstance, Optional<OwnExposure> exposure) {
    public static final SafetyInputs NOTHING = new SafetyInputs(Map.of(), Optional.empty());

    public SafetyInputs {
        bySubstance = Map.copyOf(bySubstance);
    }

    SafetyInput of(String substance) {
        return bySubstance.getOrDefault(substance, SafetyInput.NOTHING);
    }
}
