package stillroom.formulary.plan;

import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;

/** How large the batch is to be: stated, or reckoned from the containers to be filled. */
public sealed interface BatchSize {
    /** Stated by the maker. */
    record Stated(Grams mass) implements BatchSize {}

    /**
     * From containers: (containers x fill + set aside) / (1 - loss). The loss is a share of what is made, so it divides.
     *
     * @param fillEach what goes into one container, overfill included [g]
     * @param setAside retained, pH and laboratory samples together [g]
     * @param loss share of what is made that stays in vessels and on tools
     */
    record FromContainers(int containers, Grams fillEach, Grams setAside, Percent loss) implements BatchSize {}
}
