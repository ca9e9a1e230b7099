package stillroom.formulary.judgement.law;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.judgement.pot.Expressed;
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
 * @param uncertainOf substances counted in full because no molar mass or no chain of parents tells their content
 */
record Counted(List<Share> shares, double percentLow, double percent, double percentHigh, List<String> uncertainOf) {
    /** An element of a mineral: only the row itself can say how much of it a substance holds. */
    private static final String ELEMENT = "element:";

    private static final String ION = "ion:";

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

    /** Mass of what the row counts in 1 g of the substance; empty where no molar mass or no chain of parents tells. */
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
        Optional<Double> units = as.startsWith(ION)
                ? share.substance().flatMap(substance -> ions(substance, as.substring(ION.length())))
                : share.substance().flatMap(substance -> Expressed.moles(substance, as, book));
        return units.map(mol -> mol * limit.expressedMolarMassGramsPerMol().orElseThrow() / own.get());
    }

    /** Moles of the ion in one mole of a salt of it. */
    private static Optional<Double> ions(Substance substance, String ion) {
        return substance
                .parent()
                .filter(parent -> parent.counterIon()
                        .filter(known -> known.name().equalsIgnoreCase(ion))
                        .isPresent())
                .map(Parent::counterIonUnits);
    }

    List<String> lines() {
        return Pot.lines(shares);
    }
}
