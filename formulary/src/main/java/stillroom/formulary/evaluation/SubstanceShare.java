package stillroom.formulary.evaluation;

import java.util.List;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.MassFraction;

/**
 * One substance summed over all materials.
 *
 * @param substance key into the substance table
 * @param asAdded share as added: what the label's order goes by
 * @param inThePot share after evaporation: what limits and skin go by
 * @param role the weightiest role in which it came (ingredient before fragrance part before impurity)
 * @param lines ids of the lines that brought it
 */
public record SubstanceShare(
        String substance, MassFraction asAdded, MassFraction inThePot, Constituent.Role role, List<String> lines) {
    public SubstanceShare {
        lines = List.copyOf(lines);
    }
}
