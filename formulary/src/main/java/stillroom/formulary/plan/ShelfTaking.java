package stillroom.formulary.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stillroom.formulary.material.Lot;
import stillroom.formulary.plan.PlannedLine.Advice;
import stillroom.formulary.plan.PlannedLine.LotShare;
import stillroom.formulary.quantity.Grams;

/**
 * Takes from the shelf line after line, first expired first; lots that are expired or in quarantine come last and never
 * without a word. Lives only while one plan is made.
 */
final class ShelfTaking {
    private static final Comparator<LotStock> FIRST_EXPIRED_FIRST = Comparator.comparing(
                    (LotStock stock) -> stock.lot().expires().orElse(LocalDate.MAX))
            .thenComparing(stock -> stock.lot().receivedOn())
            .thenComparing(stock -> stock.lot().code());

    private final List<LotStock> sound;
    private final List<LotStock> doubtful;
    private final LocalDate today;
    private final Map<String, Grams> taken = new HashMap<>();

    ShelfTaking(List<LotStock> shelf, LocalDate today) {
        this.today = today;
        List<LotStock> ordered = shelf.stream()
                .filter(stock -> stock.onHand().signum() > 0)
                .filter(stock -> stock.lot().state() != Lot.State.USED_UP)
                .sorted(FIRST_EXPIRED_FIRST)
                .toList();
        sound = ordered.stream().filter(stock -> stock.soundOn(today)).toList();
        doubtful = ordered.stream().filter(stock -> !stock.soundOn(today)).toList();
    }

    LotPick take(String materialKey, Grams wanted) {
        List<LotShare> lots = new ArrayList<>();
        List<Advice> advice = new ArrayList<>();
        Grams open = takeFrom(sound, materialKey, wanted, lots);
        int soundLots = lots.size();
        open = takeFrom(doubtful, materialKey, open, lots);
        for (LotShare share : lots.subList(soundLots, lots.size())) {
            advice.add(new Advice(
                    doubt(share.lotCode()), List.of("Take another lot.", "Name who decides, and why."), false));
        }
        if (open.signum() > 0) {
            advice.add(notOnTheBook(wanted, open));
        }
        return new LotPick(lots, advice);
    }

    /** Sound stock of a material by the book [g]. */
    Grams onHand(String materialKey) {
        return Grams.sum(sound.stream()
                .filter(stock -> stock.lot().materialKey().equals(materialKey))
                .map(LotStock::onHand)
                .toList());
    }

    private Grams takeFrom(List<LotStock> stocks, String materialKey, Grams wanted, List<LotShare> lots) {
        Grams open = wanted;
        for (LotStock stock : stocks) {
            String code = stock.lot().code();
            Grams left = stock.onHand().minus(taken.getOrDefault(code, Grams.ZERO));
            if (open.signum() <= 0
                    || left.signum() <= 0
                    || !stock.lot().materialKey().equals(materialKey)) {
                continue;
            }
            Grams share = left.compareTo(open) < 0 ? left : open;
            lots.add(new LotShare(code, share));
            taken.merge(code, share, Grams::plus);
            open = open.minus(share);
        }
        return open;
    }

    private String doubt(String code) {
        Lot lot = doubtful.stream()
                .map(LotStock::lot)
                .filter(one -> one.code().equals(code))
                .findFirst()
                .orElseThrow();
        if (lot.state() == Lot.State.QUARANTINE) {
            return "Lot " + code + " is in quarantine.";
        }
        if (!lot.expiredOn(today)) {
            return "Lot " + code + " was to be tested again by "
                    + lot.retest().map(LocalDate::toString).orElse("a day not noted") + ".";
        }
        return "Lot " + code + " expired on "
                + lot.expires().map(LocalDate::toString).orElse("a day not noted") + "; today is " + today + ".";
    }

    private static Advice notOnTheBook(Grams wanted, Grams open) {
        return new Advice(
                open.equals(wanted)
                        ? "None of it is booked in on the shelf; " + wanted + " g are needed."
                        : "Only " + wanted.minus(open) + " g are booked in on the shelf; " + wanted
                                + " g are needed, so " + open + " g are missing.",
                List.of("If the bottle is there, pour: count the lot afterwards."),
                false);
    }
}
