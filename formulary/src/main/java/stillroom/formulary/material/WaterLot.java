package stillroom.formulary.material;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What is known of a lot of water.
 *
 * @param source where it comes from, such as the tap, a still, a bought canister
 * @param drawnOn the day on which it was drawn or made
 * @param microsiemensPerCentimetre conductivity at 25 degrees Celsius [uS/cm]
 * @param count last plate count as the laboratory wrote it: "less than 10" stays so [CFU/ml]
 * @param heat how it was treated with heat, such as boiled for 10 minutes; empty for not at all
 */
public record WaterLot(
        String source,
        Optional<LocalDate> drawnOn,
        Optional<Double> microsiemensPerCentimetre,
        String count,
        Optional<LocalDate> countedOn,
        String heat) {
    public static final WaterLot UNKNOWN =
            new WaterLot("", Optional.empty(), Optional.empty(), "", Optional.empty(), "");
}
