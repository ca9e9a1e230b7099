package stillroom.formulary.plan;

import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;
import stillroom.science.weighing.MixtureMass;

/** How large the batch is to be: stated, or reckoned from the containers to be filled. */
public sealed interface BatchSize {
    /** What is to be made, before it is rounded to the steps of a balance [g]. */
    Grams mass();

    /** Stated by the maker. */
    record Stated(Grams mass) implements BatchSize {}

    /**
     * From containers: (containers x fill + set aside) / (1 - loss). The loss is a share of what is made, so it divides.
     *
     * @param fillEach what goes into one container, overfill included [g]
     * @param setAside retained, pH and laboratory samples together [g]
     * @param loss share of what is made that stays in vessels and on tools
     */
    record FromContainers(int containers, Grams fillEach, Grams setAside, Percent loss) implements BatchSize {
        @Override
        public Grams mass() {
            return new Grams(MixtureMass.toFill(containers, fillEach.value(), setAside.value(), loss.value()));
        }
    }
}
