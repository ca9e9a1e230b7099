package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Cost against change: the least change at several ceilings of the cost, from the lowest possible to today's. */
final class Curve {
    private final Reformulation reformulation;

    Curve(Reformulation reformulation) {
        this.reformulation = reformulation;
    }

    List<TradeOff> of(Wish wish, int points) {
        Optional<TradeOff> cheapest = point(wish.with(Goal.LOWEST_COST, 1));
        Optional<TradeOff> nearest = point(wish.with(Goal.LEAST_CHANGE, 1));
        List<TradeOff> curve = new ArrayList<>();
        if (cheapest.isEmpty() || nearest.isEmpty()) {
            return curve;
        }
        double low = cheapest.get().cost();
        double high = nearest.get().cost();
        curve.add(cheapest.get());
        for (int k = 1; k < points - 1 && high > low; k++) {
            double ceiling = low + (high - low) * k / (points - 1);
            point(wish.with(Goal.LEAST_CHANGE, 1).with(wish.bands().withCost(ceiling)))
                    .ifPresent(curve::add);
        }
        if (high > low) {
            curve.add(nearest.get());
        }
        return curve;
    }

    private Optional<TradeOff> point(Wish wish) {
        return reformulation.solve(wish).answers().stream().findFirst().map(Curve::tradeOff);
    }

    private static TradeOff tradeOff(Answer answer) {
        double cost = answer.evaluation().figures().costPer100g().match(known -> known.value(), because -> Double.NaN);
        double change = answer.changes().stream()
                .mapToDouble(each -> Math.abs(each.by()))
                .sum();
        return new TradeOff(answer, cost, change);
    }
}
