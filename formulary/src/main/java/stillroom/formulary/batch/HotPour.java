package stillroom.formulary.batch;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.batch.BatchEvent.Poured;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;

/**
 * A material that went into a vessel hotter than it bears, as the vessel was last seen.
 *
 * @param pour the weighing
 * @param celsius of the vessel [degrees Celsius]
 * @param limit highest processing temperature of the material [degrees Celsius]
 */
public record HotPour(Logged<Poured> pour, double celsius, double limit) {

    /** The limit of a material that the vessel is above; none where either is not known. */
    static Optional<Double> limitBelow(Optional<Double> celsius, Material material) {
        return material.maxCelsius()
                .filter(limit -> celsius.filter(now -> now > limit).isPresent());
    }

    /** All of a batch, in order. */
    static List<HotPour> of(BatchState state, MaterialBook book) {
        Map<Integer, Double> seen = state.pourCelsius();
        List<HotPour> hot = new ArrayList<>();
        for (Logged<Poured> pour : state.pours()) {
            Optional<Double> celsius = Optional.ofNullable(seen.get(pour.number()));
            book.material(pour.event().materialKey())
                    .filter(card -> pour.event().mass().signum() > 0)
                    .flatMap(card -> limitBelow(celsius, card))
                    .ifPresent(limit -> hot.add(new HotPour(pour, celsius.orElseThrow(), limit)));
        }
        return List.copyOf(hot);
    }

    /** Whether the note of the weighing gives a reason, or the line was accepted as it is. */
    public boolean explained(BatchState state) {
        boolean accepted =
                pour.event().lineId().filter(state.accepted()::containsKey).isPresent();
        return accepted || !pour.event().note().isBlank();
    }

    /** Such as "poured at 75 °C, limit 40 °C". */
    public String says() {
        return "poured at " + whole(celsius) + " °C, limit " + whole(limit) + " °C";
    }

    static String whole(double celsius) {
        return BigDecimal.valueOf(celsius).setScale(0, RoundingMode.HALF_UP).toPlainString();
    }
}
