package stillroom.formulary.formula;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.Money;

/**
 * What the product is meant to be, before there is a formula; formulas are judged against it.
 *
 * @param people who will use it
 * @param where on the body, in words
 * @param feel how it should feel, in words
 * @param phBand wanted band; belongs to the product, not to a batch
 * @param phTarget aim inside the band
 * @param priceCeilingPer100g highest material cost per 100 g
 * @param claims as they would stand on the label, one each
 * @param pack container in words, with its capacity
 * @param market code of the market whose law is asked, such as EU, UK, US
 */
public record Brief(
        ProductType type,
        Set<People> people,
        String where,
        String feel,
        Optional<Interval> phBand,
        Optional<Double> phTarget,
        Optional<Money> priceCeilingPer100g,
        List<String> claims,
        String pack,
        String market) {
    /** Groups of users that change what is allowed. */
    public enum People {
        ADULTS,
        CHILDREN_3_AND_OVER,
        UNDER_3_YEARS,
        PREGNANT,
        BROKEN_SKIN,
        EYE_AREA
    }

    public Brief {
        people = Set.copyOf(people);
        claims = List.copyOf(claims);
    }

    /** A brief that says only what kind of product it is, for adults, in the European Union. */
    public static Brief of(ProductType type) {
        return new Brief(
                type,
                Set.of(People.ADULTS),
                "",
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                "",
                "EU");
    }
}
