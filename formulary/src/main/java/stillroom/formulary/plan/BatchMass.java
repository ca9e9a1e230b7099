package stillroom.formulary.plan;

import java.math.BigDecimal;
import stillroom.formulary.quantity.Grams;
import stillroom.science.weighing.Steps;

/** How much is made, and how that came about in one sentence. */
record BatchMass(Grams mass, String reckoning) {
    /** A size from containers is rounded up to a whole step, so that the last container is not short. */
    static BatchMass of(BatchSize size, Grams step) {
        if (size instanceof BatchSize.FromContainers from) {
            return fromContainers(from, step);
        }
        Grams stated = ((BatchSize.Stated) size).mass();
        return new BatchMass(stated, "stated: " + stated + " g");
    }

    private static BatchMass fromContainers(BatchSize.FromContainers from, Grams step) {
        BigDecimal needed = from.mass().value();
        Grams mass = new Grams(Steps.notBelow(needed, step.value()));
        return new BatchMass(
                mass,
                "(" + from.containers() + " × " + from.fillEach() + " g + " + from.setAside() + " g aside) ÷ (1 − "
                        + from.loss() + " %) = " + mass + " g, rounded up to " + step + " g");
    }
}
