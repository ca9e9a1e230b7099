package stillroom.science.dosing;

import java.util.List;
import stillroom.science.equilibrium.Component;
import stillroom.science.equilibrium.StrongIon;

/**
 * What is known of the liquid; what is not known is fitted on top.
 *
 * @param components weak acids and bases, per kilogram of liquid [mol/kg]
 * @param ions strong ions, per kilogram of liquid; need not balance [mol/kg]
 * @param waterMassFraction water in the liquid [-]
 * @param celsius temperature of the readings [°C]
 */
public record KnownChemistry(
        List<Component> components, List<StrongIon> ions, double waterMassFraction, double celsius) {
    public KnownChemistry {
        components = List.copyOf(components);
        ions = List.copyOf(ions);
        if (!(waterMassFraction > 0 && waterMassFraction <= 1)) {
            throw new IllegalArgumentException(
                    "waterMassFraction is " + waterMassFraction + ", allowed are above 0 to 1: without water no pH");
        }
    }

    /** Nothing is known but the water. */
    public static KnownChemistry none(double waterMassFraction) {
        return new KnownChemistry(List.of(), List.of(), waterMassFraction, 25);
    }
}
