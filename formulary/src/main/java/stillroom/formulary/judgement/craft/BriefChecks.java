package stillroom.formulary.judgement.craft;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Words;

/** What the brief asks besides its pH. */
final class BriefChecks {
    private BriefChecks() {}

    static void price(Pot pot, Consumer<Finding> report) {
        Optional<Double> ceiling =
                pot.brief().priceCeilingPer100g().map(money -> money.value().doubleValue());
        Optional<Figure> cost = pot.figures().costPer100g().match(Optional::of, because -> Optional.empty());
        if (ceiling.isPresent() && cost.isPresent() && cost.get().value() > ceiling.get() + 1e-9) {
            report.accept(new Finding(
                    Finding.Kind.PROBABLE_FAULT,
                    "brief.price",
                    "the product's brief",
                    List.of(),
                    List.of(cost.get(), Figure.exactly("Ceiling", ceiling.get(), "per 100 g", "from the brief")),
                    "100 g cost " + Words.figure(cost.get().value()) + ", above the brief's ceiling of "
                            + Words.figure(ceiling.get()) + ".",
                    "Replace or lower the dearest lines, or raise the ceiling."));
        }
    }
}
