package stillroom.formulary.evaluation;

import java.util.List;
import java.util.Optional;

/**
 * What is in the pot, by substance, largest first.
 *
 * @param shares one per substance
 * @param unknown material keys without a card or without a composition; their share is not in {@code shares}
 * @param unknownFraction mass fraction as added that these make up
 */
public record Composition(List<SubstanceShare> shares, List<String> unknown, double unknownFraction) {
    public Composition {
        shares = List.copyOf(shares);
        unknown = List.copyOf(unknown);
    }

    public Optional<SubstanceShare> share(String substance) {
        return shares.stream().filter(s -> s.substance().equals(substance)).findFirst();
    }
}
