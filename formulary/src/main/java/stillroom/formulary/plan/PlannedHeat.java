package stillroom.formulary.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Step;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;

/**
 * How long a material will stand hotter than its card says it bears, reckoned from the procedure before anything is
 * made. What is held hot counts with its minutes; what cools takes longer with the mass. A phase that has lines of its
 * own is brought to its hottest beside the others; all that follows happens in the common pot.
 *
 * @param limit highest processing temperature on the card [degrees Celsius]
 * @param hottest step above it [degrees Celsius]
 * @param held above it [min]
 * @param cooling above it, at the size at which the steps were timed [min]
 * @param untimed whether a step above the limit has no minutes, so that the sum is only part of it
 */
public record PlannedHeat(
        String materialKey, double limit, double hottest, double held, double cooling, boolean untimed) {
    /** Of the room into which a pot cools; common practice, no source [degrees Celsius]. */
    static final double ROOM = 20;

    /** At the size at which the steps were timed [min]. */
    public double minutes() {
        return held + cooling;
    }

    /** Where cooling takes so many times as long [min]. */
    public double minutes(double coolingFactor) {
        return held + cooling * coolingFactor;
    }

    /** One for each material that has a limit and a step above it. */
    public static List<PlannedHeat> of(Formula formula, MaterialBook book, Function<Step, Optional<Double>> minutes) {
        Map<String, PlannedHeat> heats = new LinkedHashMap<>();
        List<Phase> phases = formula.phases();
        for (int i = 0; i < phases.size(); i++) {
            List<Step> steps = stepsFor(phases, i);
            for (Line line : phases.get(i).lines()) {
                book.material(line.materialKey())
                        .flatMap(card -> of(card, steps, minutes))
                        .ifPresent(heat -> heats.merge(line.materialKey(), heat, PlannedHeat::longer));
            }
        }
        return List.copyOf(heats.values());
    }

    /** Its own, and of the later phases what is done once they are in the common pot. */
    private static List<Step> stepsFor(List<Phase> phases, int from) {
        List<Step> steps = new ArrayList<>(phases.get(from).steps());
        for (Phase later : phases.subList(from + 1, phases.size())) {
            steps.addAll(later.steps().subList(beside(later), later.steps().size()));
        }
        return steps;
    }

    /** How many of the first steps are done beside the others: up to its hottest, where that is hot. */
    private static int beside(Phase phase) {
        int hottest = 0;
        double celsius = ScaleUp.HOT;
        for (int i = 0; i < phase.steps().size(); i++) {
            double now = phase.steps().get(i).celsius().orElse(0.0);
            if (now >= celsius && !phase.lines().isEmpty()) {
                celsius = Math.nextUp(now);
                hottest = i + 1;
            }
        }
        return hottest;
    }

    private static Optional<PlannedHeat> of(Material card, List<Step> steps, Function<Step, Optional<Double>> minutes) {
        return card.maxCelsius().flatMap(limit -> {
            PlannedHeat heat = new PlannedHeat(card.key(), limit, limit, 0, 0, false);
            double before = ROOM;
            for (Step step : steps) {
                if (step.celsius().isPresent()) {
                    heat = heat.and(before, step.celsius().get(), minutes.apply(step));
                    before = step.celsius().get();
                }
            }
            return heat.minutes() > 0 || heat.untimed ? Optional.of(heat) : Optional.empty();
        });
    }

    private PlannedHeat and(double before, double celsius, Optional<Double> minutes) {
        double top = Math.max(hottest, celsius);
        if (celsius < before) {
            double share = shareAbove(before, celsius);
            return new PlannedHeat(
                    materialKey,
                    limit,
                    top,
                    held,
                    cooling + share * minutes.orElse(0.0),
                    untimed || (share > 0 && minutes.isEmpty()));
        }
        boolean above = celsius > limit;
        return new PlannedHeat(
                materialKey,
                limit,
                top,
                held + (above ? minutes.orElse(0.0) : 0),
                cooling,
                untimed || (above && minutes.isEmpty()));
    }

    /**
     * Part of the time of a cooling that is spent above the limit, 0 to 1, by Newton's law of cooling: the distance to
     * the room shrinks by the same factor in the same time.
     */
    private double shareAbove(double from, double to) {
        if (from <= limit) {
            return 0;
        }
        if (to >= limit) {
            return 1;
        }
        return to > ROOM && limit > ROOM
                ? Math.log((from - ROOM) / (limit - ROOM)) / Math.log((from - ROOM) / (to - ROOM))
                : (from - limit) / (from - to);
    }

    /** The same material in two lines: the one that stands hot longer. */
    private PlannedHeat longer(PlannedHeat other) {
        return other.minutes() > minutes() ? other : this;
    }
}
