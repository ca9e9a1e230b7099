package stillroom.formulary.batch;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.material.CardsInstead;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.LotCard;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;

/**
 * The cards of a batch as its lots really were. A material that came from several lots gets the composition of their
 * mixture, by mass, which makes the composition of the pot exact.
 *
 * @param book in which those cards stand for the nominal ones
 * @param reasons why certificates could not be applied, one sentence each
 * @param changed names of the materials whose certificate counted
 */
public record MadeBook(MaterialBook book, List<String> reasons, List<String> changed) {
    public MadeBook {
        reasons = List.copyOf(reasons);
        changed = List.copyOf(changed);
    }

    /** @param lots all lots that may have been used */
    public static MadeBook of(List<MadeLot> made, MaterialBook book, List<Lot> lots) {
        Map<String, Material> instead = new LinkedHashMap<>();
        List<String> reasons = new ArrayList<>();
        List<String> changed = new ArrayList<>();
        for (String key : made.stream().map(MadeLot::materialKey).distinct().toList()) {
            List<MadeLot> shares = made.stream()
                    .filter(one ->
                            one.materialKey().equals(key) && one.inProduct().signum() > 0)
                    .toList();
            book.material(key).ifPresent(card -> {
                List<Part> parts = shares.stream()
                        .map(share -> part(share, card, book, lots, reasons))
                        .toList();
                if (parts.stream().anyMatch(part -> part.card() != card)) {
                    instead.put(key, mixed(card, parts));
                    changed.add(card.name());
                }
            });
        }
        return new MadeBook(
                new CardsInstead(book, instead), reasons.stream().distinct().toList(), changed);
    }

    private record Part(Material card, double grams) {}

    private static Part part(MadeLot share, Material card, MaterialBook book, List<Lot> lots, List<String> reasons) {
        Optional<Lot> lot = share.lot()
                .flatMap(code ->
                        lots.stream().filter(one -> one.code().equals(code)).findFirst());
        if (lot.isEmpty()) {
            return new Part(card, share.inProduct().doubleValue());
        }
        LotCard as = LotCard.of(card, lot.get(), book);
        if (!as.reason().isEmpty()) {
            reasons.add(as.reason());
        }
        return new Part(as.card(), share.inProduct().doubleValue());
    }

    private record Key(String substance, Constituent.Role role) {}

    private static Material mixed(Material card, List<Part> parts) {
        double whole = parts.stream().mapToDouble(Part::grams).sum();
        Map<Key, double[]> sums = new LinkedHashMap<>();
        for (Part part : parts) {
            double share = part.grams() / whole;
            for (Constituent one : part.card().composition()) {
                double[] sum = sums.computeIfAbsent(new Key(one.substance(), one.role()), key -> new double[3]);
                sum[0] += share * one.massFraction().lower();
                sum[1] += share * one.massFraction().nominal();
                sum[2] += share * one.massFraction().upper();
            }
        }
        Constituent[] mixed = sums.entrySet().stream()
                .map(entry -> new Constituent(
                        entry.getKey().substance(),
                        fraction(entry.getValue()),
                        entry.getKey().role()))
                .toArray(Constituent[]::new);
        return card.withComposition(mixed);
    }

    /** Rounding must not put the ends in the wrong order. */
    private static MassFraction fraction(double[] sum) {
        double nominal = Math.min(1, sum[1]);
        return new MassFraction(Math.min(sum[0], nominal), nominal, Math.min(1, Math.max(sum[2], nominal)));
    }
}
