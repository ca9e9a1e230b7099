package stillroom.formulary.material;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.quantity.Percent;

/**
 * What the maker of a perfume or an essential oil certifies about it. Its table of allergens stands in the composition
 * of the card, with its ranges.
 *
 * @param issuedOn the day on the certificate
 * @param standard which edition of which standard it goes by, in words, may be empty
 * @param maxima highest use by product category; none where the certificate gives none
 * @param furocoumarinsMilligramsPerKilogram in the material [mg/kg]; empty where it says nothing of them
 */
public record FragranceCertificate(
        LocalDate issuedOn,
        String standard,
        List<MaximumUse> maxima,
        Optional<Double> furocoumarinsMilligramsPerKilogram) {
    public FragranceCertificate {
        maxima = List.copyOf(maxima);
        if (furocoumarinsMilligramsPerKilogram
                .filter(content -> !(content >= 0 && content <= 1e6))
                .isPresent()) {
            throw new IllegalArgumentException("furocoumarins are " + furocoumarinsMilligramsPerKilogram.get()
                    + " mg/kg, allowed 0 to 1000000 mg/kg");
        }
    }

    /**
     * One category of the certificate.
     *
     * @param category as the certificate calls it, such as "5A"
     * @param types product types that it covers, the maker's reading
     * @param highest of the perfume in the product ready for use [%]
     */
    public record MaximumUse(String category, Set<ProductType> types, Percent highest) {
        public MaximumUse {
            types = Set.copyOf(types);
        }
    }

    /** The strictest category that covers the product type; empty where none does. */
    public Optional<MaximumUse> maximumFor(ProductType type) {
        return maxima.stream()
                .filter(maximum -> maximum.types().contains(type))
                .min(Comparator.comparing(MaximumUse::highest));
    }
}
