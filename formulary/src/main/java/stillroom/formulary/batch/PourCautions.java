package stillroom.formulary.batch;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Grams;

/** What to mind before a material goes into a vessel as it stands; advice, it stops nothing. */
public final class PourCautions {
    /** Flash points of alcohols lie below room temperature when strong; a warm vessel or hotplate lights them. */
    private static final double WARM_CELSIUS = 30;

    private PourCautions() {}

    /** Sentences for the person at the bench: heat, fire, room in the vessel, and the card's own cautions. */
    public static List<String> of(Vessel vessel, Material material, Grams mass, MaterialBook book) {
        List<String> cautions = new ArrayList<>();
        tooHot(vessel, material).ifPresent(cautions::add);
        fire(vessel, material, book).ifPresent(cautions::add);
        noRoom(vessel, mass).ifPresent(cautions::add);
        cautions.addAll(material.cautions());
        return List.copyOf(cautions);
    }

    private static Optional<String> tooHot(Vessel vessel, Material material) {
        return HotPour.limitBelow(vessel.celsius(), material)
                .map(limit -> "Wait: " + HotPour.whole(vessel.celsius().orElseThrow()) + " °C, limit "
                        + HotPour.whole(limit) + " °C.");
    }

    private static Optional<String> fire(Vessel vessel, Material material, MaterialBook book) {
        boolean alcohol = material.composition().stream()
                .anyMatch(part -> book.substance(part.substance())
                        .filter(one -> one.is("alcohol") && one.is("volatile"))
                        .isPresent());
        boolean warm = vessel.celsius().filter(now -> now >= WARM_CELSIUS).isPresent();
        return alcohol
                ? Optional.of(
                        warm
                                ? "Fire: alcohol into a warm vessel. Let it cool, hotplate off and away, no flame."
                                : "Fire: alcohol. Hotplate off, no flame, fresh air.")
                : Optional.empty();
    }

    private static Optional<String> noRoom(Vessel vessel, Grams mass) {
        Grams after = vessel.mixture().net().plus(mass);
        return vessel.capacity()
                .filter(capacity -> after.compareTo(capacity) > 0)
                .map(capacity -> vessel.name() + " holds " + capacity + " g; with this it would be "
                        + new Grams(after.value().setScale(1, RoundingMode.HALF_EVEN)) + " g.");
    }
}
