package stillroom.formulary.plan;

import java.math.BigDecimal;
import java.util.Optional;
import stillroom.formulary.material.Material;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;
import stillroom.science.weighing.Share;
import stillroom.science.weighing.Steps;

/**
 * One line while its plan is made.
 *
 * @param exact its exact share of the batch [g]
 * @param allowed percentages that a law or a preservative's minimum leaves, where there are any
 */
record LineInHand(
        ResolvedLine line,
        Optional<Material> card,
        Grams batch,
        Grams exact,
        Percent tolerance,
        Weighing weighing,
        Optional<PercentRange> allowed) {

    Grams step() {
        return weighing.balance().step();
    }

    String name() {
        return card.map(Material::name).orElse(line.materialKey());
    }

    /** Whether the formula itself asks for what is not allowed: rounding does not mend that, so it does not try. */
    boolean askedOutside() {
        return allowed.filter(range -> line.percent().compareTo(range.low()) < 0
                        || line.percent().compareTo(range.high()) > 0)
                .isPresent();
    }

    boolean limited() {
        return allowed.isPresent() && !askedOutside();
    }

    Optional<Grams> least() {
        return limited() ? allowed.map(range -> range.low().of(batch)) : Optional.empty();
    }

    Optional<Grams> most() {
        return limited() ? allowed.map(range -> range.high().of(batch)) : Optional.empty();
    }

    Share share() {
        return new Share(exact.value(), step().value(), least().map(Grams::value), most().map(Grams::value));
    }

    /** The same without floor and ceiling, for a balance too coarse to find a step between them. */
    Share freeShare() {
        return Share.free(exact.value(), step().value());
    }

    /** Half a step at least: what the display shows as on target is on target [g]. */
    Grams toleranceAt(Grams target) {
        BigDecimal step = step().value();
        BigDecimal whole = Steps.notAbove(tolerance.of(target).value(), step);
        return new Grams(whole.max(step.movePointLeft(1).multiply(BigDecimal.valueOf(5))));
    }
}
