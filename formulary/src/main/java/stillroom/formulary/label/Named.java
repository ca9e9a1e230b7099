package stillroom.formulary.label;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.judgement.pot.Item;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Substance;

/**
 * Sums what a label names, as added, over all materials: ingredients by substance, a perfume or an essential oil whole
 * under its own name, impurities not at all.
 */
final class Named {
    private static final String CARD = "material:";

    private final Pot pot;
    private final Map<String, double[]> sums = new LinkedHashMap<>();
    private final Set<String> unnamed = new LinkedHashSet<>();

    private Named(Pot pot) {
        this.pot = pot;
    }

    /**
     * What there is to name.
     *
     * @param shares by substance key, as added
     * @param unnamed materials whose composition is not known
     */
    record Sums(Map<String, MassFraction> shares, List<String> unnamed) {}

    static Sums of(Pot pot) {
        Named named = new Named(pot);
        for (Item item : pot.items()) {
            named.add(item.material(), item.name(), item.portion().share(), 8);
        }
        Map<String, MassFraction> shares = new LinkedHashMap<>();
        named.sums.forEach((key, sum) ->
                shares.put(key, new MassFraction(Math.min(1, sum[0]), Math.min(1, sum[1]), Math.min(1, sum[2]))));
        return new Sums(shares, List.copyOf(named.unnamed));
    }

    private void add(Optional<Material> card, String name, MassFraction share, int deep) {
        List<Constituent> parts = card.map(Material::composition).orElse(List.of());
        if (share.upper() == 0) {
            return;
        }
        if (parts.isEmpty() || deep == 0) {
            unnamed.add(name);
            return;
        }
        Optional<Constituent> perfume = parts.stream().filter(this::isPerfume).findFirst();
        if (perfume.isPresent()) {
            put(perfume.get().substance(), share);
            return;
        }
        for (Constituent part : parts) {
            MassFraction inner = new MassFraction(
                    share.lower() * part.massFraction().lower(),
                    share.nominal() * part.massFraction().nominal(),
                    share.upper() * part.massFraction().upper());
            if (part.role() != Constituent.Role.INGREDIENT) {
                continue;
            }
            if (part.substance().startsWith(CARD)) {
                String key = part.substance().substring(CARD.length());
                add(pot.book().material(key), key, inner, deep - 1);
            } else {
                put(part.substance(), inner);
            }
        }
    }

    private boolean isPerfume(Constituent part) {
        return part.role() == Constituent.Role.INGREDIENT
                && pot.book()
                        .substance(part.substance())
                        .map((Substance known) -> known.is("fragrance") || known.is("essential-oil"))
                        .orElse(false);
    }

    private void put(String substance, MassFraction share) {
        double[] sum = sums.computeIfAbsent(substance, key -> new double[3]);
        sum[0] += share.lower();
        sum[1] += share.nominal();
        sum[2] += share.upper();
    }
}
