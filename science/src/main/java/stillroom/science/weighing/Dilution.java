package stillroom.science.weighing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * A dilution in one or two steps by which a small amount is weighed as a larger one.
 *
 * @param steps one or two; the second takes its concentrate from the first
 * @param portion what is weighed of the last dilution [g]
 * @param brings what the portion brings of the concentrate, as the rounded weighings make it [g]
 * @param deviation standard uncertainty of that, from all weighings [g]
 */
public record Dilution(List<Step> steps, BigDecimal portion, BigDecimal brings, BigDecimal deviation) {
    private static final MathContext DIGITS = MathContext.DECIMAL64;
    private static final BigDecimal A_LITTLE_MORE = new BigDecimal("1.05");

    public Dilution {
        steps = List.copyOf(steps);
    }

    /** One mixing: so much concentrate (or first dilution) in so much carrier [g]. */
    public record Step(BigDecimal concentrate, BigDecimal carrier) {
        public BigDecimal made() {
            return concentrate.add(carrier);
        }
    }

    /**
     * What is asked.
     *
     * @param wanted amount of the concentrate that the portion shall bring [g]
     * @param carrierThere most carrier that the portion may bring [g]
     * @param minimum least net weight for each weighing [g]
     * @param step of the balance [g]
     * @param deviation standard deviation of one weighing [g]
     * @param tolerance how far the amount may be off, as a fraction of itself: twice the deviation stays within it
     * @param largest most that may be made of one dilution [g]
     */
    public record Wish(
            BigDecimal wanted,
            BigDecimal carrierThere,
            BigDecimal minimum,
            BigDecimal step,
            BigDecimal deviation,
            BigDecimal tolerance,
            BigDecimal largest) {}

    /** What is carried by the portion beside the concentrate [g]. */
    public BigDecimal carrierBrought() {
        return portion.subtract(brings);
    }

    /** What is made and not used, of all steps together [g]. */
    public BigDecimal waste() {
        BigDecimal made = steps.stream().map(Step::made).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal passedOn = steps.size() == 2 ? steps.get(1).concentrate() : BigDecimal.ZERO;
        return made.subtract(passedOn).subtract(portion);
    }

    /**
     * The dilution with the least waste in one step; in two where one cannot be done or wastes so much more that a
     * second step is worth its trouble (ten minimum weights, common practice, no source). None where the carrier does
     * not suffice for a portion that can be weighed.
     */
    public static Optional<Dilution> of(Wish wish) {
        Optional<Dilution> one = least(wish, Dilution::oneStep);
        Optional<Dilution> two = least(wish, Dilution::twoSteps);
        if (one.isEmpty() || two.isEmpty()) {
            return one.or(() -> two);
        }
        BigDecimal saved = one.get().waste().subtract(two.get().waste());
        return saved.compareTo(wish.minimum().multiply(BigDecimal.TEN)) > 0 ? two : one;
    }

    /** Weighs more and more above the minimum until the weighings together keep the tolerance. */
    private static Optional<Dilution> least(Wish wish, BiFunction<Wish, BigDecimal, Optional<Dilution>> way) {
        BigDecimal least = Steps.notBelow(wish.minimum(), wish.step()).add(wish.step());
        BigDecimal most = wish.minimum().multiply(BigDecimal.TEN);
        while (least.compareTo(most) <= 0) {
            Optional<Dilution> found = way.apply(wish, least).filter(dilution -> dilution.fits(wish));
            if (found.isPresent()) {
                return found;
            }
            BigDecimal more = Steps.notBelow(least.multiply(A_LITTLE_MORE), wish.step());
            least = more.compareTo(least) > 0 ? more : least.add(wish.step());
        }
        return Optional.empty();
    }

    private boolean fits(Wish wish) {
        BigDecimal off = brings.subtract(wish.wanted()).abs().max(deviation.add(deviation));
        return off.compareTo(wish.tolerance().multiply(wish.wanted())) <= 0
                && carrierBrought().compareTo(wish.carrierThere()) <= 0
                && steps.stream().allMatch(one -> one.made().compareTo(wish.largest()) <= 0);
    }

    private static Optional<Dilution> oneStep(Wish wish, BigDecimal least) {
        BigDecimal strength = wish.wanted().divide(least, DIGITS);
        return strength.compareTo(BigDecimal.ONE) >= 0
                ? Optional.empty()
                : finished(wish, List.of(step(wish, least, strength)));
    }

    /** Both steps come out alike in mass, which wastes least: the first strength is the root of the last. */
    private static Optional<Dilution> twoSteps(Wish wish, BigDecimal least) {
        BigDecimal last = wish.wanted().divide(least, DIGITS);
        if (last.compareTo(BigDecimal.ONE) >= 0) {
            return Optional.empty();
        }
        Step first = step(wish, least, last.sqrt(DIGITS));
        BigDecimal strength = first.concentrate().divide(first.made(), DIGITS);
        Step second = step(wish, least, last.divide(strength, DIGITS).min(BigDecimal.ONE));
        return finished(wish, List.of(first, second));
    }

    private static Optional<Dilution> finished(Wish wish, List<Step> steps) {
        BigDecimal strength = BigDecimal.ONE;
        for (Step one : steps) {
            if (one.carrier().compareTo(wish.minimum()) < 0) {
                return Optional.empty();
            }
            strength = strength.multiply(one.concentrate()).divide(one.made(), MathContext.DECIMAL128);
        }
        BigDecimal portion = Steps.nearest(wish.wanted().divide(strength, MathContext.DECIMAL128), wish.step());
        if (portion.compareTo(wish.minimum()) < 0 || portion.compareTo(lastMade(steps)) > 0) {
            return Optional.empty();
        }
        BigDecimal brings = portion.multiply(strength);
        return Optional.of(new Dilution(steps, portion, brings, deviation(wish, steps, portion, brings)));
    }

    private static BigDecimal lastMade(List<Step> steps) {
        return steps.get(steps.size() - 1).made();
    }

    private static Step step(Wish wish, BigDecimal concentrate, BigDecimal strength) {
        BigDecimal made = Steps.nearest(concentrate.divide(strength, DIGITS), wish.step());
        return new Step(concentrate, made.subtract(concentrate));
    }

    /**
     * Relative variances add, the carrier's counting by its share of the dilution. Source: JCGM 100:2008, 5.1.2, on
     * portion * product of concentrate / (concentrate + carrier).
     */
    private static BigDecimal deviation(Wish wish, List<Step> steps, BigDecimal portion, BigDecimal brings) {
        BigDecimal variance = square(wish.deviation().divide(portion, DIGITS));
        for (Step one : steps) {
            BigDecimal carrierShare = one.carrier().divide(one.made(), DIGITS);
            variance = variance.add(
                            square(carrierShare.multiply(wish.deviation()).divide(one.concentrate(), DIGITS)))
                    .add(square(wish.deviation().divide(one.made(), DIGITS)));
        }
        return brings.multiply(variance.sqrt(DIGITS), DIGITS);
    }

    private static BigDecimal square(BigDecimal value) {
        return value.multiply(value, DIGITS);
    }
}
