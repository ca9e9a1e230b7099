package stillroom.formulary.judgement.pot;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.evaluation.Composition;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Figures;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.rule.RuleBook;

/** The figures that stand beside a formula, computed from its opened composition. */
record FigureWork(
        Subject subject,
        List<Item> items,
        List<Share> shares,
        Composition composition,
        PriceBook prices,
        RuleBook rules) {

    Figures figures() {
        List<Figure> others = new ArrayList<>();
        others.add(percentOf("Oil phase", Emulsion.oils(shares), "sum of oils, butters, waxes and silicones"));
        Emulsion.hlb(shares).ifPresent(others::add);
        Emulsion.requiredHlb(shares).ifPresent(others::add);
        WaterActivity.of(shares, rules.norrish()).ifPresent(others::add);
        anionicToAmphoteric().ifPresent(others::add);
        NaturalOrigin.of(items).ifPresent(others::add);
        return new Figures(total(), water(), activeMatter(), phases(), cost(), ph(), others);
    }

    private Figure total() {
        double sum = items.stream()
                .mapToDouble(item -> item.portion().share().nominal())
                .sum();
        return Figure.exactly("Total", clean(sum * 100), "%", "sum of all lines as added");
    }

    /** Takes away the dust of binary sums far below any balance. */
    private static double clean(double percent) {
        return Math.round(percent * 1e9) / 1e9;
    }

    private Figure water() {
        List<Share> water = shares.stream().filter(Share::isWater).toList();
        return percentOf("Water", water, "water as added and brought by materials, less what evaporated");
    }

    private Map<ChargeClass, Figure> activeMatter() {
        Map<ChargeClass, Figure> byClass = new EnumMap<>(ChargeClass.class);
        for (ChargeClass charge : ChargeClass.values()) {
            List<Share> actives =
                    shares.stream().filter(share -> share.isSurfactant(charge)).toList();
            if (!actives.isEmpty()) {
                byClass.put(charge, percentOf("Active matter", actives, "surfactants as 100 %, not as supplied"));
            }
        }
        return byClass;
    }

    /** Active matter of the one over the other; a cleanser's makers look at it, mildness does not follow from it. */
    private Optional<Figure> anionicToAmphoteric() {
        Figure anionic = percentOf("", surfactants(ChargeClass.ANIONIC), "");
        Figure amphoteric = percentOf("", surfactants(ChargeClass.AMPHOTERIC), "");
        return anionic.low() > 0 && amphoteric.low() > 0
                ? Optional.of(new Figure(
                        "Anionic to amphoteric",
                        anionic.low() / amphoteric.high(),
                        anionic.value() / amphoteric.value(),
                        anionic.high() / amphoteric.low(),
                        "",
                        "ratio of active matter",
                        List.of()))
                : Optional.empty();
    }

    private List<Share> surfactants(ChargeClass charge) {
        return shares.stream().filter(share -> share.isSurfactant(charge)).toList();
    }

    static Figure percentOf(String name, List<Share> shares, String method) {
        double low = 0;
        double nominal = 0;
        double high = 0;
        for (Share share : shares) {
            MassFraction amount = share.amount();
            low += amount.lower();
            nominal += amount.nominal();
            high += amount.upper();
        }
        return new Figure(
                name,
                clean(Math.min(low, 1) * 100),
                clean(Math.min(nominal, 1) * 100),
                clean(Math.min(high, 1) * 100),
                "%",
                method,
                List.of());
    }

    private List<Figure> phases() {
        Map<String, double[]> byPhase = new LinkedHashMap<>();
        for (Item item : items) {
            double[] sums = byPhase.computeIfAbsent(item.portion().phase(), name -> new double[3]);
            sums[0] += item.portion().share().lower();
            sums[1] += item.portion().share().nominal();
            sums[2] += item.portion().share().upper();
        }
        List<Figure> figures = new ArrayList<>();
        byPhase.forEach((name, sums) -> figures.add(new Figure(
                name,
                clean(sums[0] * 100),
                clean(sums[1] * 100),
                clean(sums[2] * 100),
                "%",
                "sum of its lines as added",
                List.of())));
        return figures;
    }

    private Outcome<Figure> cost() {
        return Cost.per100g(items, prices);
    }

    private Outcome<Figure> ph() {
        return subject.measuredPh()
                .map(read -> Outcome.known(
                        new Figure("pH", read.low(), read.middle(), read.high(), "pH", "as read", List.of())))
                .orElseGet(() -> new Acidity(items, shares, composition, rules.acids(), rules.effective()).expected());
    }
}
