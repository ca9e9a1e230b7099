package stillroom.formulary.judgement.pot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import stillroom.formulary.constants.AcidConstant;
import stillroom.formulary.constants.AcidConstants;
import stillroom.formulary.material.CounterIon;
import stillroom.formulary.material.Parent;
import stillroom.formulary.material.Substance;
import stillroom.science.equilibrium.Solution;

/** What of a composition takes part in the pH, as moles per kilogram of the water in the pot. */
record Dissolved(List<Part> parts) {
    /** Room temperature of a reading [degrees Celsius]. */
    private static final double CELSIUS = 25;

    /**
     * One substance that the table of constants knows.
     *
     * @param acidUnits moles of its acid or base in one mole of it
     */
    record Part(Share share, AcidConstant acid, double gramsPerMol, double acidUnits, Optional<Parent> salt) {}

    static Dissolved of(List<Share> shares, AcidConstants acids) {
        List<Part> parts = new ArrayList<>();
        for (Share share : shares) {
            share.substance().ifPresent(known -> part(share, known, acids).ifPresent(parts::add));
        }
        return new Dissolved(List.copyOf(parts));
    }

    private static Optional<Part> part(Share share, Substance known, AcidConstants acids) {
        Optional<AcidConstant> acid = known.acidKey().flatMap(acids::find);
        if (acid.isEmpty()
                || known.molarMassGramsPerMol().isEmpty()
                || share.amount().upper() == 0) {
            return Optional.empty();
        }
        Optional<Parent> salt =
                known.parent().filter(parent -> parent.counterIon().isPresent());
        double units = salt.map(Parent::units).orElse(1.0);
        return Optional.of(
                new Part(share, acid.get(), known.molarMassGramsPerMol().get(), units, salt));
    }

    /**
     * The solution, with each substance at the amount that the function picks.
     *
     * @param waterFraction water per mass of product, above 0
     * @param amount mass fraction of the product, by part
     */
    Solution solution(double waterFraction, AcidConstants acids, ToDoubleFunction<Part> amount) {
        Solution solution = Solution.water(CELSIUS);
        for (Part part : parts) {
            double molPerKg = 1000 * amount.applyAsDouble(part) / part.gramsPerMol() / waterFraction;
            solution = withAcid(solution, part.acid(), molPerKg * part.acidUnits());
            if (part.salt().isPresent()) {
                Parent salt = part.salt().get();
                solution = withIon(solution, salt.counterIon().orElseThrow(), molPerKg * salt.counterIonUnits(), acids);
            }
        }
        return solution;
    }

    private static Solution withAcid(Solution solution, AcidConstant acid, double molPerKg) {
        return acid.strong()
                ? solution.withIon(acid.name(), acid.chargeFullyProtonated(), molPerKg)
                : solution.with(acid.system(), molPerKg);
    }

    private static Solution withIon(Solution solution, CounterIon ion, double molPerKg, AcidConstants acids) {
        Optional<AcidConstant> weak = switch (ion) {
            case AMMONIUM -> acids.find("ammonia");
            case SULFATE -> acids.find("sulfuric-acid");
            case SODIUM, POTASSIUM, LITHIUM, MAGNESIUM, CALCIUM, ZINC, CHLORIDE, BROMIDE, METHOSULFATE ->
                Optional.empty();
        };
        return weak.isPresent()
                ? withAcid(solution, weak.get(), molPerKg)
                : solution.withIon(ion.name(), ion.charge(), molPerKg);
    }
}
