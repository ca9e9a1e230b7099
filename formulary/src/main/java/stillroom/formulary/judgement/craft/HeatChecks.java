package stillroom.formulary.judgement.craft;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Step;
import stillroom.formulary.judgement.pot.Item;
import stillroom.formulary.judgement.pot.Opened;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Words;
import stillroom.formulary.material.Material;

/** Materials that do not stand the heat of their phase. */
final class HeatChecks {
    /** Where no card says more, perfume and other heat-sensitive matter goes in below this [degrees Celsius]. */
    private static final double COOL_CELSIUS = 45;

    /** Up to this far above, a card's rounded figure decides little [degrees Celsius]. */
    private static final double NEAR = 10;

    private HeatChecks() {}

    static void materials(Pot pot, Consumer<Finding> report) {
        Map<String, Double> hottest = hottestByPhase(pot.subject().phases());
        for (Item item : pot.items()) {
            Optional<Double> phase =
                    Optional.ofNullable(hottest.get(item.portion().phase()));
            Optional<Double> bears = bears(pot, item);
            if (phase.isPresent() && bears.isPresent() && phase.get() > bears.get() && carried(item)) {
                report.accept(finding(item, phase.get(), bears.get()));
            }
        }
    }

    private static boolean carried(Item item) {
        return item.portion().share().upper() > 0;
    }

    private static Map<String, Double> hottestByPhase(List<Phase> phases) {
        Map<String, Double> hottest = new HashMap<>();
        for (Phase phase : phases) {
            phase.steps().stream()
                    .map(Step::celsius)
                    .flatMap(Optional::stream)
                    .max(Double::compare)
                    .ifPresent(celsius -> hottest.merge(phase.name(), celsius, Math::max));
        }
        return hottest;
    }

    private static Optional<Double> bears(Pot pot, Item item) {
        return item.material().flatMap(Material::maxCelsius).or(() -> sensitive(pot, item));
    }

    private static Optional<Double> sensitive(Pot pot, Item item) {
        boolean sensitive = Opened.parts(item.material(), pot.book()).stream()
                .flatMap(part -> pot.book().substance(part.substance()).stream())
                .anyMatch(substance ->
                        substance.is("heat-sensitive") || substance.is("fragrance") || substance.is("essential-oil"));
        return sensitive ? Optional.of(COOL_CELSIUS) : Optional.empty();
    }

    private static Finding finding(Item item, double phase, double bears) {
        return new Finding(
                phase > bears + NEAR ? Finding.Kind.PROBABLE_FAULT : Finding.Kind.LOOK_AT_THIS,
                "heat.material",
                item.material()
                        .map(card -> card.sources().getOrDefault("maxCelsius", CraftChecks.PRACTICE))
                        .orElse(CraftChecks.PRACTICE),
                List.of(item.portion().lineId()),
                List.of(
                        Figure.exactly("Hottest step", phase, "°C", "of the phase's procedure"),
                        Figure.exactly("Bears", bears, "°C", "from the card, else 45 °C for heat-sensitive matter")),
                item.name() + " bears " + Words.figure(bears) + " °C; its phase is taken to " + Words.figure(phase)
                        + " °C.",
                "Move it to a phase that goes in below " + Words.figure(bears) + " °C.");
    }
}
