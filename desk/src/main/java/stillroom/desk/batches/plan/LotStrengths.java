package stillroom.desk.batches.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import stillroom.desk.shell.Format;
import stillroom.formulary.batch.MadeBook;
import stillroom.formulary.batch.MadeLot;
import stillroom.formulary.material.Certificate;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.LotCard;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Strength;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.lot.StockedLot;

/**
 * The lots from which a line will be taken, first expired first, and how strong they are together.
 *
 * @param taken so much as the active matter asks of each [g]
 */
record LotStrengths(Material card, List<Taken> taken) {
    LotStrengths {
        taken = List.copyOf(taken);
    }

    /**
     * So much of one lot.
     *
     * @param factor how many times as strong as the card; 1 where its certificate does not say
     */
    record Taken(Lot lot, double grams, double factor) {}

    /**
     * Lots are used up one after the other until they bring the active matter that the card's strength would.
     *
     * @param sound in the order in which they are taken
     * @param needed by the card; none while the size of the batch is not known, then the first lot speaks for all
     */
    static LotStrengths of(Material card, List<StockedLot> sound, Optional<Grams> needed) {
        double open = needed.map(Grams::doubleValue).orElse(0.0);
        List<Taken> taken = new ArrayList<>();
        for (StockedLot stocked : sound) {
            if (!taken.isEmpty() && open <= 0) {
                break;
            }
            double factor = LotCard.factor(card, stocked.lot()).orElse(1);
            double asked = factor > 0 ? open / factor : 0;
            double grams = Math.min(asked, stocked.onHand().doubleValue());
            taken.add(new Taken(stocked.lot(), grams, factor));
            open -= grams * factor;
        }
        return new LotStrengths(card, taken);
    }

    /** How many times as strong as the card the lots are together; none where no lot is there. */
    OptionalDouble factor() {
        double grams = taken.stream().mapToDouble(Taken::grams).sum();
        if (taken.isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                grams > 0
                        ? taken.stream()
                                        .mapToDouble(one -> one.grams() * one.factor())
                                        .sum()
                                / grams
                        : taken.get(0).factor());
    }

    /** The card as the lots are together; none where no certificate changes it. */
    Optional<Material> card(MaterialBook book) {
        boolean open = taken.stream().mapToDouble(Taken::grams).sum() <= 0;
        List<MadeLot> made = taken.stream()
                .limit(open ? 1 : taken.size())
                .map(one -> {
                    Grams grams = new Grams(java.math.BigDecimal.valueOf(open ? 1 : one.grams()));
                    return new MadeLot(card.key(), Optional.of(one.lot().code()), grams, grams);
                })
                .toList();
        MadeBook as = MadeBook.of(made, book, taken.stream().map(Taken::lot).toList());
        return as.changed().isEmpty() ? Optional.empty() : as.book().material(card.key());
    }

    /** Each lot with its strength. */
    String says() {
        return taken.stream().map(LotStrengths::says).collect(Collectors.joining(", "));
    }

    private static String says(Taken one) {
        String strength = one.lot()
                .certificate()
                .flatMap(Certificate::strength)
                .map(stated -> " has " + percent(stated) + " %")
                .orElse(" is taken as the card says");
        return "lot " + one.lot().code() + strength;
    }

    static String percent(Strength strength) {
        return Format.range(
                strength.percent().low().value().doubleValue(),
                strength.percent().high().value().doubleValue(),
                2);
    }
}
