package stillroom.formulary.batch;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Money;
import stillroom.formulary.quantity.Price;

/**
 * What a batch cost, from the lots really used: everything put in counts, samples, corrections and loss included.
 *
 * @param byMaterial cost of each priced material
 * @param unpriced materials of which no price is known: the total is too low by these
 * @param containers filled; none yet means no cost per container
 */
public record BatchCost(
        Map<String, Money> byMaterial,
        Money packs,
        Money labour,
        Money overhead,
        Money rejected,
        List<String> unpriced,
        int containers) {
    private static final BigDecimal MINUTES_PER_HOUR = BigDecimal.valueOf(60);

    public BatchCost {
        byMaterial = Map.copyOf(byMaterial);
        unpriced = List.copyOf(unpriced);
    }

    public static BatchCost of(BatchState state, CostFacts facts) {
        Map<String, Money> costs = new LinkedHashMap<>();
        List<String> unpriced = new ArrayList<>();
        for (Content content : state.inputs()) {
            // What was taken back went to waste and is paid for.
            Optional<Price> price = facts.price(content.materialKey(), content.lot());
            if (price.isEmpty() && !unpriced.contains(content.materialKey())) {
                unpriced.add(content.materialKey());
            }
            if (content.mass().signum() > 0) {
                price.ifPresent(p -> costs.merge(content.materialKey(), p.of(content.mass()), Money::plus));
            }
        }
        int containers = state.fills().stream()
                .mapToInt(fill -> fill.event().containers())
                .sum();
        return new BatchCost(
                costs,
                times(facts.packEach(), BigDecimal.valueOf(containers)),
                times(
                        facts.labourPerHour(),
                        BigDecimal.valueOf(facts.labourMinutes()).divide(MINUTES_PER_HOUR, MathContext.DECIMAL64)),
                facts.overhead(),
                facts.rejected(),
                unpriced,
                containers);
    }

    public Money material() {
        return byMaterial.values().stream().reduce(Money.ZERO, Money::plus);
    }

    public Money total() {
        return material().plus(packs).plus(labour).plus(overhead).plus(rejected);
    }

    /** None before anything was filled. */
    public Optional<Money> perContainer() {
        return containers > 0 ? Optional.of(over(total(), BigDecimal.valueOf(containers))) : Optional.empty();
    }

    /** What a container has to bring so that the margin is this share of the price, 0 up to but not 100 [%]. */
    public Optional<Money> priceForMargin(BigDecimal marginPercent) {
        BigDecimal kept = BigDecimal.valueOf(100).subtract(marginPercent);
        if (marginPercent.signum() < 0 || kept.signum() <= 0) {
            throw new IllegalArgumentException(
                    "margin is " + marginPercent.toPlainString() + " %, allowed 0 to below 100 %");
        }
        return perContainer().map(cost -> over(cost, kept.movePointLeft(2)));
    }

    /** How much dearer a container gets when a material's price rises by so many percent. */
    public Optional<Money> riseOf(String materialKey, BigDecimal percent) {
        Money now = byMaterial.getOrDefault(materialKey, Money.ZERO);
        return containers > 0
                ? Optional.of(over(times(now, percent.movePointLeft(2)), BigDecimal.valueOf(containers)))
                : Optional.empty();
    }

    /** Material cost of a mass of the mixed bulk, as when it is discarded. */
    public Money materialOf(Grams part, Grams whole) {
        return over(times(material(), part.value()), whole.value());
    }

    private static Money times(Money money, BigDecimal factor) {
        return new Money(money.value().multiply(factor, MathContext.DECIMAL64));
    }

    private static Money over(Money money, BigDecimal divisor) {
        return new Money(money.value().divide(divisor, MathContext.DECIMAL64));
    }
}
