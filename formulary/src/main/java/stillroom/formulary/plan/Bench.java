package stillroom.formulary.plan;

import java.util.List;

/**
 * What a plan may count on: the balances, what stands on the shelf, and how exact the weighing is to be.
 *
 * @param balances at least one
 * @param shelf all lots known, whatever their state
 */
public record Bench(List<Balance> balances, List<LotStock> shelf, Tolerances tolerances) {
    public Bench {
        balances = List.copyOf(balances);
        shelf = List.copyOf(shelf);
        if (balances.isEmpty()) {
            throw new IllegalArgumentException("a bench needs at least one balance");
        }
    }
}
