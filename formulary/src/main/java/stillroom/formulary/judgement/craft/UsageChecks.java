package stillroom.formulary.judgement.craft;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.judgement.pot.Item;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Words;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.Material;
import stillroom.formulary.quantity.PercentRange;

/** Each material against its usual range of use. */
final class UsageChecks {
    /** Twice a usual range can be meant; far beyond it is mostly a slip of the decimal point. */
    private static final double SLIP = 2.5;

    private static final double WATER = 0.05;
    private static final Set<Family> CORRECTORS = EnumSet.of(Family.ACID, Family.BASE, Family.SALT);

    private UsageChecks() {}

    private static Family family(Item item) {
        return item.material().map(Material::family).orElse(Family.OTHER);
    }

    static void range(Pot pot, Consumer<Finding> report) {
        for (Item item : pot.items()) {
            item.material().flatMap(Material::usage).ifPresent(usage -> judge(pot, item, usage, report));
        }
    }

    private static void judge(Pot pot, Item item, PercentRange usage, Consumer<Finding> report) {
        MassFraction share = item.portion().share();
        double low = usage.low().massFraction();
        double high = usage.high().massFraction();
        // The wider side of rounding: 0.3 % of a range that ends at 0.3 % is inside.
        double dust = 1e-9;
        // A fine fragrance is perfume in alcohol: the usual range of a perfume is that of other products.
        boolean fragrance = item.is(Family.FRAGRANCE) && pot.brief().type() == ProductType.FINE_FRAGRANCE;
        boolean filler = item.is(Family.WATER) || fragrance;
        if (share.nominal() == 0 || filler) {
            return;
        }
        if (share.upper() > high + dust) {
            // A corrector takes as much as the reading asks; its usual range says little.
            // Without water an acid or a salt corrects nothing: it is there for another purpose, such as fizzing.
            boolean corrects = pot.waterFraction() >= WATER || !CORRECTORS.contains(family(item));
            boolean slip = share.isExact() && corrects && share.nominal() > high * SLIP;
            Finding.Kind kind = slip ? Finding.Kind.PROBABLE_FAULT : Finding.Kind.LOOK_AT_THIS;
            report.accept(finding(kind, "usage.above", item, usage, share.upper(), "above"));
        } else if (share.upper() < low - dust) {
            below(pot, item)
                    .ifPresent(
                            kind -> report.accept(finding(kind, "usage.below", item, usage, share.upper(), "below")));
        }
    }

    /** Too little of the only preservative is a fault; too little of anything else is worth a look at most. */
    private static Optional<Finding.Kind> below(Pot pot, Item item) {
        if (item.is(Family.PRESERVATIVE)) {
            boolean only = pot.items(Family.PRESERVATIVE).size() == 1;
            return Optional.of(only ? Finding.Kind.PROBABLE_FAULT : Finding.Kind.LOOK_AT_THIS);
        }
        return item.is(Family.COLOURANT) || item.is(Family.FRAGRANCE)
                ? Optional.empty()
                : Optional.of(Finding.Kind.LOOK_AT_THIS);
    }

    private static Finding finding(
            Finding.Kind kind, String rule, Item item, PercentRange usage, double share, String side) {
        return new Finding(
                kind,
                rule,
                item.material()
                        .map(card -> card.sources().getOrDefault("usage", CraftChecks.PRACTICE))
                        .orElse(CraftChecks.PRACTICE),
                List.of(item.portion().lineId()),
                List.of(
                        Figure.exactly("In the product", share * 100, "%", "as added, upper end"),
                        new Figure(
                                "Usual range",
                                usage.low().value().doubleValue(),
                                usage.high().value().doubleValue(),
                                usage.high().value().doubleValue(),
                                "%",
                                "from the card",
                                List.of())),
                item.name() + " is at " + Words.percent(share) + ", " + side + " its usual " + usage.low() + " to "
                        + usage.high() + " %.",
                "Check the decimal point; else note why.");
    }
}
