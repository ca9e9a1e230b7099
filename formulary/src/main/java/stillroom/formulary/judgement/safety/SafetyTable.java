package stillroom.formulary.judgement.safety;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.evaluation.Composition;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.evaluation.SubstanceShare;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;
import stillroom.formulary.rule.ExposureFigures;
import stillroom.formulary.rule.RuleBook;

/**
 * Systemic exposure and margin of safety by constituent: the table for the assessor, never a verdict.
 *
 * <p>SED = exposure to the product [mg/kg/d] · content · absorption; margin = systemic point of departure / SED.
 * Preservatives are reckoned with the exposure by all products together as well. Source: SCCS notes of guidance, 12th
 * revision, sections 3 and 4, formulas from memory; exposure as tabled.
 *
 * @param product kind of product as the exposure table names it; empty where it has none
 * @param exposureMilligramsPerKilogramDay product that stays on the body, or why that is not known [mg/kg/d]
 * @param exposureSource where that comes from
 * @param lines one per substance, largest first
 * @param unknown material keys without a composition, whose constituents are not in the table
 * @param unknownPercent what these make up [%]
 */
public record SafetyTable(
        String product,
        Outcome<Double> exposureMilligramsPerKilogramDay,
        String exposureSource,
        List<SafetyLine> lines,
        List<String> unknown,
        double unknownPercent) {
    /** Dermal absorption where nothing is known: SCCS notes of guidance, from memory. */
    public static final double DEFAULT_ABSORPTION = 0.5;

    /** What stands as source of an absorption that nobody entered. */
    public static final String DEFAULT_SOURCE = "default of the notes of guidance where nothing is known (from memory)";

    private static final String SWALLOWED = "a lip product is swallowed: counted in full (from memory)";
    private static final String NO_DEPARTURE = "no point of departure entered";

    public SafetyTable {
        lines = List.copyOf(lines);
        unknown = List.copyOf(unknown);
    }

    public static SafetyTable of(
            Composition composition, ProductType type, MaterialBook book, RuleBook rules, SafetyInputs inputs) {
        Optional<ExposureFigures> tabled = Optional.ofNullable(rules.exposure().get(type));
        Optional<OwnExposure> own = inputs.exposure();
        Optional<Double> exposure = own.map(OwnExposure::milligramsPerKilogramDay)
                .or(() -> tabled.map(ExposureFigures::milligramsPerKilogramDay));
        String source = own.map(OwnExposure::source)
                .orElseGet(() -> tabled.map(ExposureFigures::source).orElse(""));
        Reckoning reckoning = new Reckoning(type, exposure, rules.aggregateOfPreservatives());
        List<SafetyLine> lines = composition.shares().stream()
                .map(share -> reckoning.line(share, book.substance(share.substance()), inputs.of(share.substance())))
                .toList();
        return new SafetyTable(
                own.isPresent()
                        ? type.words()
                        : tabled.map(ExposureFigures::product).orElse(""),
                exposure.<Outcome<Double>>map(Outcome::known).orElseGet(SafetyTable::noExposure),
                source,
                lines,
                composition.unknown().stream()
                        .map(key -> book.material(key).map(Material::name).orElse(key))
                        .toList(),
                composition.unknownFraction() * 100);
    }

    private static Outcome<Double> noExposure() {
        return Outcome.notKnown("no exposure figure is tabled for this kind of product");
    }

    /** Systemic exposure dose [mg/kg/d]. */
    public static double systemicExposure(
            double productMilligramsPerKilogramDay, double massFraction, double absorbedFraction) {
        return productMilligramsPerKilogramDay * massFraction * absorbedFraction;
    }

    /** What holds for the whole table. */
    private record Reckoning(ProductType type, Optional<Double> exposure, Optional<ExposureFigures> aggregate) {
        SafetyLine line(SubstanceShare share, Optional<Substance> substance, SafetyInput input) {
            double content = share.inThePot().upper();
            double absorbed = input.absorbedFraction().orElse(swallowed() ? 1 : DEFAULT_ABSORPTION);
            Outcome<Double> systemic = exposure.<Outcome<Double>>map(
                            product -> Outcome.known(systemicExposure(product, content, absorbed)))
                    .orElseGet(SafetyTable::noExposure);
            Outcome<Double> departure = input.departure()
                    .<Outcome<Double>>map(known -> Outcome.known(known.systemicMilligramsPerKilogramDay()))
                    .orElseGet(() -> Outcome.notKnown(NO_DEPARTURE));
            return new SafetyLine(
                    share.substance(),
                    substance.map(Substance::inciName).orElse(share.substance()),
                    content * 100,
                    share.inThePot().nominal() * 100,
                    absorbed,
                    absorptionSource(input),
                    systemic,
                    departure,
                    margin(departure, systemic),
                    margin(departure, together(substance, content, absorbed)),
                    input.departure().map(PointOfDeparture::leastMargin).orElse(PointOfDeparture.DEFAULT_MARGIN),
                    input.departure().map(PointOfDeparture::source).orElse(""));
        }

        private boolean swallowed() {
            return type == ProductType.LIP_PRODUCT;
        }

        private String absorptionSource(SafetyInput input) {
            return input.absorbedFraction().isPresent()
                    ? input.absorptionSource()
                    : swallowed() ? SWALLOWED : DEFAULT_SOURCE;
        }

        private Outcome<Double> together(Optional<Substance> substance, double content, double absorbed) {
            boolean preservative =
                    substance.map(known -> known.is("preservative-annex-v")).orElse(false);
            return preservative
                    ? aggregate
                            .<Outcome<Double>>map(all ->
                                    Outcome.known(systemicExposure(all.milligramsPerKilogramDay(), content, absorbed)))
                            .orElseGet(() -> Outcome.notKnown("no exposure by all products together is tabled"))
                    : Outcome.notKnown("reckoned for preservatives only");
        }

        private static Outcome<Double> margin(Outcome<Double> departure, Outcome<Double> systemic) {
            return systemic.match(
                    exposed -> departure.match(
                            dose -> exposed > 0 ? Outcome.known(dose / exposed) : Outcome.notKnown("no exposure"),
                            Outcome::notKnown),
                    Outcome::notKnown);
        }
    }
}
