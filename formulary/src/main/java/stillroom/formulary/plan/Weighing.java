package stillroom.formulary.plan;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;
import stillroom.science.weighing.MinimumWeight;

/**
 * How one balance weighs: what it can be trusted with.
 *
 * @param filledVessel whether one pours into a vessel that already holds something: two readings count then, unless
 *     the repeatability is the maker's own, measured under bench conditions
 */
public record Weighing(Balance balance, boolean filledVessel) {
    /** Standard deviation of one weighing [g]. */
    public Grams deviation() {
        Optional<BigDecimal> own = balance.repeatability().map(Grams::value);
        BigDecimal one = MinimumWeight.deviation(own, balance.step().value());
        return new Grams(filledVessel && own.isEmpty() ? MinimumWeight.ofTwoReadings(one) : one);
    }

    /** Smallest net weight for a tolerance [g]. */
    public Grams minimum(Percent tolerance) {
        return new Grams(MinimumWeight.of(deviation().value(), tolerance.value()));
    }

    /** The pharmacopoeial smallest net weight (0.10 %), for information [g]. */
    public Grams pharmacopoeialMinimum() {
        return new Grams(MinimumWeight.pharmacopoeial(deviation().value()));
    }

    /**
     * The coarsest balance that is fine enough for this mass and can hold it; where none is, the finest that can hold
     * it; where it is too heavy for all, the one with the largest maximum.
     */
    static Weighing serving(List<Balance> balances, Grams mass, Percent tolerance, boolean filledVessel) {
        List<Weighing> holding = balances.stream()
                .filter(b -> mass.compareTo(b.maximum()) <= 0)
                .map(b -> new Weighing(b, filledVessel))
                .sorted(Comparator.comparing((Weighing w) -> w.balance().step()).reversed())
                .toList();
        if (holding.isEmpty()) {
            Balance largest = balances.stream()
                    .max(Comparator.comparing(Balance::maximum))
                    .orElseThrow();
            return new Weighing(largest, filledVessel);
        }
        return holding.stream()
                .filter(w -> mass.compareTo(w.minimum(tolerance)) >= 0)
                .findFirst()
                .orElse(holding.get(holding.size() - 1));
    }
}
