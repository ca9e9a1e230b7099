package stillroom.formulary.judgement.law;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Parent;
import stillroom.formulary.material.Substance;
import stillroom.formulary.rule.Limit;

/**
 * How much a row counts: shares as the acid, base, ion or alcohol in which its figure is written.
 *
 * @param shares the substances counted
 * @param percentLow, percent, percentHigh what they make together, converted [% of the product]
 * @param uncertainOf substances counted in full because no molar mass is known
 */
record Counted(List<Share> shares, double percentLow, double percent, double percentHigh, List<String> uncertainOf) {
    /** An element of a mineral: only the row itself can say how much of it a substance holds. */
    private static final String ELEMENT = "element:";

    static Counted of(List<Share> shares, Limit limit, MaterialBook book) {
        double low = 0;
        double nominal = 0;
        double high = 0;
        List<String> uncertain = new ArrayList<>();
        for (Share share : shares) {
            Optional<Double> known = factor(share, limit, book);
            if (known.isEmpty()) {
                uncertain.add(share.name());
            }
            double factor = known.orElse(1.0);
            MassFraction amount = share.amount();
            low += amount.lower() * factor * 100;
            nominal += amount.nominal() * factor * 100;
            high += amount.upper() * factor * 100;
        }
        return new Counted(shares, low, nominal, high, List.copyOf(uncertain));
    }

    /** The same without the substances whose content is not known. */
    Counted known(Limit limit, MaterialBook book) {
        return of(
                shares.stream()
                        .filter(share -> factor(share, limit, book).isPresent())
                        .toList(),
                limit,
                book);
    }

    /** Mass of what the row counts in 1 g of the substance; empty where no molar mass tells. */
    static Optional<Double> factor(Share share, Limit limit, MaterialBook book) {
        String as = limit.expressedAs();
        if (as.isEmpty() || share.isNamedBy(List.of(as))) {
            return Optional.of(1.0);
        }
        Optional<Double> content = share.names().stream()
                .flatMap(name -> Optional.ofNullable(limit.contents().get(name)).stream())
                .findFirst();
        if (content.isPresent() || as.startsWith(ELEMENT)) {
            return content;
        }
        Optional<Double> own = share.substance().flatMap(Substance::molarMassGramsPerMol);
        if (own.isEmpty()) {
            return Optional.empty();
        }
        double units = as.startsWith("ion:")
                ? ions(share)
                : share.substance()
                        .map(substance -> units(substance, as, book, 4))
                        .orElse(1.0);
        return Optional.of(units * limit.expressedMolarMassGramsPerMol().orElseThrow() / own.get());
    }

    private static double ions(Share share) {
        return share.substance()
                .flatMap(Substance::parent)
                .map(Parent::counterIonUnits)
                .filter(units -> units > 0)
                .orElse(1.0);
    }

    /** Moles of the counted substance in one mole, along the chain of parents; 1 where the chain does not lead there. */
    private static double units(Substance substance, String as, MaterialBook book, int deep) {
        if (substance.key().equals(as) || deep == 0 || substance.parent().isEmpty()) {
            return 1;
        }
        Parent parent = substance.parent().get();
        double further = book.substance(parent.substance())
                .map(next -> units(next, as, book, deep - 1))
                .orElse(1.0);
        return parent.units() * further;
    }

    List<String> lines() {
        return Pot.lines(shares);
    }
}
