package stillroom.formulary.rule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.constants.AcidConstants;
import stillroom.formulary.constants.EffectiveConstant;
import stillroom.formulary.formula.ProductType;

/**
 * Everything that a judgement looks up besides materials.
 *
 * @param laws by market code
 * @param norrish constant of Norrish's equation for water activity, by substance key [dimensionless]
 * @param acids dissociation constants by acid key
 * @param inhibition by key of the preservative
 * @param exposure by product type, where the tables have it
 * @param aggregateOfPreservatives exposure by all products together, for preservatives
 * @param distribution of preservatives between water, oil and micelles
 * @param growth least water activity by group of organisms
 * @param notCovered by market code, what its record leaves out, in words
 * @param effective constants of weak acids and bases that gather, by substance
 * @param names for a market, its own name for an INCI name, such as Water for Aqua
 */
public record RuleBook(
        Map<String, MarketLaw> laws,
        List<GovernedClaim> claims,
        List<Duty> duties,
        List<WarningText> warnings,
        List<OrderRule> order,
        Map<String, Double> norrish,
        AcidConstants acids,
        Map<String, String> notCovered,
        Map<String, Map<String, String>> names,
        Map<String, InhibitionFigures> inhibition,
        Map<ProductType, ExposureFigures> exposure,
        Optional<ExposureFigures> aggregateOfPreservatives,
        DistributionFigures distribution,
        List<GrowthFigures> growth,
        Map<String, EffectiveConstant> effective) {
    public RuleBook {
        laws = Map.copyOf(laws);
        claims = List.copyOf(claims);
        duties = List.copyOf(duties);
        warnings = List.copyOf(warnings);
        order = List.copyOf(order);
        norrish = Map.copyOf(norrish);
        notCovered = Map.copyOf(notCovered);
        names = Map.copyOf(names);
        inhibition = Map.copyOf(inhibition);
        exposure = Map.copyOf(exposure);
        growth = List.copyOf(growth);
        effective = Map.copyOf(effective);
    }

    public Optional<MarketLaw> law(String market) {
        return Optional.ofNullable(laws.get(market));
    }

    /** The same with a country of the maker's own, which takes the place of one on record under the same code. */
    public RuleBook with(Country country) {
        String market = country.law().market();
        Map<String, MarketLaw> allLaws = new LinkedHashMap<>(laws);
        allLaws.put(market, country.law());
        Map<String, String> allNotCovered = new LinkedHashMap<>(notCovered);
        allNotCovered.put(market, country.notCovered());
        Map<String, Map<String, String>> allNames = new LinkedHashMap<>(names);
        allNames.put(market, country.names());
        List<Duty> allDuties = new ArrayList<>(duties);
        allDuties.addAll(country.duties());
        List<WarningText> allWarnings = new ArrayList<>(country.warnings());
        allWarnings.addAll(warnings);
        return new RuleBook(
                allLaws,
                claims,
                allDuties,
                allWarnings,
                order,
                norrish,
                acids,
                allNotCovered,
                allNames,
                inhibition,
                exposure,
                aggregateOfPreservatives,
                distribution,
                growth,
                effective);
    }

    /** A warning's wording in a language; empty where nobody has entered it. */
    public Optional<WarningText> warning(String key, String language) {
        return warnings.stream()
                .filter(text -> text.key().equals(key) && text.language().equals(language))
                .findFirst();
    }

    /** The newest day on which any row of the market was read; of any market where this one has none. */
    public LocalDate recordedOn(String market) {
        return law(market)
                .flatMap(MarketLaw::recordedOn)
                .or(() -> laws.values().stream()
                        .flatMap(law -> law.recordedOn().stream())
                        .max(Comparator.naturalOrder()))
                .orElse(LocalDate.EPOCH);
    }
}
