package stillroom.formulary.judgement.safety;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.evaluation.Composition;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.evaluation.SubstanceShare;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;
import stillroom.formulary.rule.ExposureFigures;
import stillroom.formulary.rule.RuleBook;

/**
 * Systemic exposure and margin of safety by constituent.
 *
 * <p>SED = exposure to the product [mg/kg/d] · content · dermal absorption; margin = point of departure · bioavailable
 * fraction / SED. Source: SCCS notes of guidance, 12th revision, sections 3 and 4, formulas from memory; exposure as
 * tabled.
 */
public final class SafetyTable {
    private static final double DEFAULT_ABSORPTION = 0.5;

    private SafetyTable() {}

    /**
     * One line per substance, largest first.
     *
     * @param absorbed dermal absorption by substance, 0 to 1; 0.5 where none is given
     */
    public static List<SafetyLine> of(
            Composition composition,
            ProductType type,
            MaterialBook book,
            RuleBook rules,
            Map<String, PointOfDeparture> departures,
            Map<String, Double> absorbed) {
        Optional<ExposureFigures> exposure =
                Optional.ofNullable(rules.exposure().get(type));
        return composition.shares().stream()
                .map(share -> line(
                        share,
                        book.substance(share.substance())
                                .map(Substance::inciName)
                                .orElse(share.substance()),
                        exposure,
                        Optional.ofNullable(departures.get(share.substance())),
                        absorbed.getOrDefault(share.substance(), DEFAULT_ABSORPTION)))
                .toList();
    }

    /** Systemic exposure dose [mg/kg/d]. */
    public static double systemicExposure(
            double productMilligramsPerKilogramDay, double massFraction, double absorbedFraction) {
        return productMilligramsPerKilogramDay * massFraction * absorbedFraction;
    }

    private static SafetyLine line(
            SubstanceShare share,
            String name,
            Optional<ExposureFigures> exposure,
            Optional<PointOfDeparture> departure,
            double absorbed) {
        double content = share.inThePot().upper();
        Outcome<Double> systemic = exposure.<Outcome<Double>>map(
                        known -> Outcome.known(systemicExposure(known.milligramsPerKilogramDay(), content, absorbed)))
                .orElseGet(() -> Outcome.notKnown("no exposure figure is tabled for this kind of product"));
        return new SafetyLine(
                share.substance(),
                name,
                content * 100,
                absorbed,
                systemic,
                margin(systemic, departure),
                departure.map(PointOfDeparture::leastMargin).orElse(100.0),
                exposure.map(ExposureFigures::source).orElse("")
                        + departure.map(known -> "; " + known.source()).orElse(""));
    }

    private static Outcome<Double> margin(Outcome<Double> systemic, Optional<PointOfDeparture> departure) {
        if (departure.isEmpty()) {
            return Outcome.notKnown("no point of departure entered");
        }
        PointOfDeparture known = departure.get();
        return systemic.match(
                dose -> dose > 0
                        ? Outcome.known(known.milligramsPerKilogramDay() * known.bioavailableFraction() / dose)
                        : Outcome.notKnown("no exposure"),
                Outcome::notKnown);
    }
}
