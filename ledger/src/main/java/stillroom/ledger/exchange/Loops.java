package stillroom.ledger.exchange;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Material;

/** Cards that contain themselves. */
final class Loops {
    private final Map<String, Material> cards = new HashMap<>();
    private final Set<String> sound = new HashSet<>();

    private Loops(List<Material> materials) {
        materials.forEach(card -> cards.put(card.key(), card));
    }

    /** The first chain that comes back to its beginning, such as {@code a → b → a}. */
    static Optional<String> find(List<Material> materials) {
        Loops loops = new Loops(materials);
        for (Material card : materials) {
            Optional<String> chain = loops.from(card.key(), new LinkedHashSet<>());
            if (chain.isPresent()) {
                return chain;
            }
        }
        return Optional.empty();
    }

    private Optional<String> from(String key, LinkedHashSet<String> chain) {
        if (sound.contains(key) || !cards.containsKey(key)) {
            return Optional.empty();
        }
        if (!chain.add(key)) {
            return Optional.of(String.join(" → ", chain) + " → " + key);
        }
        Material card = cards.get(key);
        for (Constituent part : card == null ? List.<Constituent>of() : card.composition()) {
            if (part.substance().startsWith(CompositionFields.CARD)) {
                Optional<String> loop = from(part.substance().substring(CompositionFields.CARD.length()), chain);
                if (loop.isPresent()) {
                    return loop;
                }
            }
        }
        chain.remove(key);
        sound.add(key);
        return Optional.empty();
    }
}
