package stillroom.desk.demonstration;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.material.Material;

/** A starter card with the workshop's own facts on it. */
final class OwnCard {
    private OwnCard() {}

    static Material of(Material card, Delivery delivery, LocalDate day) {
        Map<String, String> sources = new HashMap<>(card.sources());
        sources.put("price", "invented for the demonstration");
        return new Material(
                card.key(),
                card.revision(),
                day,
                card.name(),
                card.family(),
                card.functions(),
                card.composition(),
                card.strength(),
                card.usage(),
                card.workingPh(),
                card.ownPh(),
                card.densityGramsPerMillilitre(),
                card.solubility(),
                card.maxCelsius(),
                card.cautions(),
                delivery.isWater() ? "" : "cosmetic",
                delivery.supplier(),
                Optional.of(delivery.price()),
                card.note(),
                card.naturalOriginIndex(),
                sources);
    }
}
