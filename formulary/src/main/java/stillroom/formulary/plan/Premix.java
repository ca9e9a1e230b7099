package stillroom.formulary.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.quantity.Grams;
import stillroom.science.weighing.Dilution;

/** A dilution by which a line too small for the balance is weighed, its carrier taken out of the carrier's own line. */
final class Premix {
    private Premix() {}

    static Optional<Dilution> of(LineInHand line, Grams minimum, LineInHand carrier) {
        return Dilution.of(new Dilution.Wish(
                line.exact().value(),
                carrier.exact().value(),
                minimum.value(),
                line.step().value(),
                line.weighing().deviation().value(),
                line.tolerance().value().movePointLeft(2),
                line.weighing().balance().maximum().value()));
    }

    static String says(Dilution dilution, String carrier) {
        List<String> parts = new ArrayList<>();
        String what = " of it";
        for (Dilution.Step step : dilution.steps()) {
            parts.add(plain(step.concentrate()) + " g" + what + " into " + plain(step.carrier()) + " g " + carrier);
            what = " of that";
        }
        return "Make a premix: " + String.join("; ", parts) + ". Weigh " + plain(dilution.portion())
                + " g of the premix, and " + WeightAdvice.shown(new Grams(dilution.carrierBrought())) + " g less of "
                + carrier + ".";
    }

    private static String plain(BigDecimal grams) {
        return new Grams(grams).toString();
    }
}
