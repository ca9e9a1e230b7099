package stillroom.science.blend;

import java.util.ArrayList;
import java.util.List;

/**
 * A blend that keeps every limit.
 *
 * @param fractions mass fraction of each ingredient, in their order; they add up to 1
 * @param sums weighted sum of each limit, in their order
 * @param prices change of the objective per unit by which the binding bound of each limit is moved up, in their order, with
 *     the same ingredients used; 0 where the limit does not bind. A bound that binds may still have the price 0.
 */
public record Mix(List<Double> fractions, List<Double> sums, List<Double> prices) {
    public Mix {
        fractions = List.copyOf(fractions);
        sums = List.copyOf(sums);
        prices = List.copyOf(prices);
    }

    static Mix of(Workings workings, double[] exact) {
        List<Double> fractions = new ArrayList<>();
        for (double fraction : exact) {
            fractions.add(Math.max(0, fraction));
        }
        List<Double> sums = new ArrayList<>();
        List<Double> prices = new ArrayList<>();
        for (int i = 0; i < workings.blend.limits().size(); i++) {
            Limit limit = workings.blend.limits().get(i);
            sums.add(limit.of(exact));
            prices.add(workings.simplex.rowPrice(1 + i) / limit.scale() + 0.0);
        }
        return new Mix(fractions, sums, prices);
    }

    public int used() {
        return (int) fractions.stream()
                .filter(fraction -> fraction > Workings.NOTHING)
                .count();
    }
}
