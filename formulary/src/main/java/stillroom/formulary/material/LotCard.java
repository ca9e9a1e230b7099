package stillroom.formulary.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import stillroom.formulary.quantity.PercentRange;

/**
 * A card as one lot of it really is.
 *
 * @param card with the lot's composition, or as it was where that is not known
 * @param reason why the certificate could not be applied, one sentence; empty where it could, or says nothing
 */
public record LotCard(Material card, String reason) {
    private static final String WATER = "water";

    /** The card with the certificate's values in place of its nominal ones. */
    public static LotCard of(Material card, Lot lot, MaterialBook book) {
        Optional<Certificate> measured = lot.certificate();
        if (measured.isEmpty()) {
            return new LotCard(card, "");
        }
        if (!measured.get().composition().isEmpty()) {
            return new LotCard(card.withComposition(measured.get().composition().toArray(Constituent[]::new)), "");
        }
        if (measured.get().strength().isEmpty()) {
            return new LotCard(card, "");
        }
        OptionalDouble factor = factor(card, lot);
        if (factor.isEmpty()) {
            return new LotCard(
                    card,
                    "Lot " + lot.code() + " states its strength on another basis than the card of " + card.name()
                            + ", so the card's figure stays.");
        }
        return scaled(card, lot, factor.getAsDouble(), book);
    }

    /** How many times as strong as its card a lot is; none where the two cannot be compared. */
    public static OptionalDouble factor(Material card, Lot lot) {
        Optional<Strength> nominal = card.strength();
        Optional<Strength> real = lot.certificate().flatMap(Certificate::strength);
        boolean comparable = nominal.isPresent()
                && real.isPresent()
                && nominal.get().basis() == real.get().basis()
                && middle(nominal.get().percent()) > 0;
        return comparable
                ? OptionalDouble.of(
                        middle(real.get().percent()) / middle(nominal.get().percent()))
                : OptionalDouble.empty();
    }

    private static double middle(PercentRange range) {
        return (range.low().massFraction() + range.high().massFraction()) / 2;
    }

    private static LotCard scaled(Material card, Lot lot, double factor, MaterialBook book) {
        if (card.composition().isEmpty()) {
            return new LotCard(
                    card, "The composition of " + card.name() + " is not known, so its strength tells nothing.");
        }
        Predicate<Constituent> counted = counted(card, book);
        double counts = sum(card.composition(), counted) * factor;
        double others = sum(card.composition(), counted.negate().and(LotCard::isDry));
        boolean hasWater = card.composition().stream().anyMatch(part -> !isDry(part));
        if (counts + (hasWater ? others : 0) > 1 + 1e-9) {
            return new LotCard(
                    card, "With the strength of lot " + lot.code() + ", " + card.name() + " would be more than whole.");
        }
        double rest = 1 - counts;
        List<Constituent> parts = new ArrayList<>();
        for (Constituent part : card.composition()) {
            double share;
            if (counted.test(part)) {
                share = part.massFraction().nominal() * factor;
            } else if (!hasWater) {
                share = part.massFraction().nominal() * rest / Math.max(others, 1e-12);
            } else {
                share = isDry(part) ? part.massFraction().nominal() : rest - others;
            }
            parts.add(new Constituent(
                    part.substance(), MassFraction.exactly(Math.min(1, Math.max(0, share))), part.role()));
        }
        return new LotCard(card.withComposition(parts.toArray(Constituent[]::new)), "");
    }

    /** What the strength names; where no constituent bears that name, all that is not water. */
    private static Predicate<Constituent> counted(Material card, MaterialBook book) {
        Strength strength = card.strength().orElseThrow();
        Predicate<Constituent> named = part -> book.substance(part.substance())
                .filter(one -> one.inciName().equalsIgnoreCase(strength.of()))
                .isPresent();
        boolean found = strength.basis() != Strength.Basis.DRY_RESIDUE
                && card.composition().stream().anyMatch(named);
        return found ? named : LotCard::isDry;
    }

    private static boolean isDry(Constituent part) {
        return !part.substance().equals(WATER);
    }

    private static double sum(List<Constituent> parts, Predicate<Constituent> which) {
        return parts.stream()
                .filter(which)
                .mapToDouble(part -> part.massFraction().nominal())
                .sum();
    }
}
