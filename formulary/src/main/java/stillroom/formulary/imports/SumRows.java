package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds the rows that are sums of others by their figures alone: every phase headed by its sum, or every phase followed by it. It
 * counts only where the sums part the whole table without a rest, which does not come about by chance.
 */
final class SumRows {
    /** Of the largest figure: what rounding to the last digit that is written may leave. */
    private static final BigDecimal ROUNDING = new BigDecimal("0.00008");

    private static final BigDecimal NEAR = new BigDecimal("0.005");
    private static final int MOST = 2_000;

    private SumRows() {}

    /**
     * A row with a figure.
     *
     * @param open whether it may be a sum: its name is that of no material
     */
    record Item(int place, BigDecimal value, boolean open) {}

    /** What the rows are that are sums, by place; empty where the figures do not show it. */
    static Map<Integer, RowKind> of(List<Item> items) {
        if (items.size() < 4 || items.size() > MOST) {
            return Map.of();
        }
        Map<Integer, RowKind> found = parted(items);
        if (!found.isEmpty() || !items.get(items.size() - 1).open()) {
            return found;
        }
        Item last = items.get(items.size() - 1);
        Map<Integer, RowKind> before = parted(items.subList(0, items.size() - 1));
        BigDecimal lines = items.subList(0, items.size() - 1).stream()
                .filter(item -> !before.containsKey(item.place()))
                .map(Item::value)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        if (before.isEmpty() || !isNear(last.value(), lines)) {
            return Map.of();
        }
        Map<Integer, RowKind> all = new HashMap<>(before);
        all.put(last.place(), RowKind.TOTAL);
        return all;
    }

    private static Map<Integer, RowKind> parted(List<Item> items) {
        Map<Integer, RowKind> below = kinds(blocks(items), RowKind.PHASE);
        if (!below.isEmpty()) {
            return below;
        }
        List<Item> upwards = new ArrayList<>(items);
        Collections.reverse(upwards);
        List<Item> sums = blocks(upwards).orElse(List.of());
        // Each with a total of 100, they are formulas and not phases.
        return sums.stream().anyMatch(sum -> isWhole(sum.value()))
                ? Map.of()
                : kinds(Optional.of(sums), RowKind.SUBTOTAL);
    }

    private static boolean isWhole(BigDecimal value) {
        return isNear(value, BigDecimal.valueOf(100))
                || value.subtract(BigDecimal.ONE).signum() == 0;
    }

    private static Map<Integer, RowKind> kinds(Optional<List<Item>> sums, RowKind kind) {
        Map<Integer, RowKind> kinds = new HashMap<>();
        sums.orElse(List.of()).forEach(sum -> kinds.put(sum.place(), kind));
        return kinds;
    }

    /** The sums with which blocks begin that follow each other to the very end; empty where there are no two such blocks. */
    private static Optional<List<Item>> blocks(List<Item> items) {
        BigDecimal allowed = items.stream()
                .map(item -> item.value().abs())
                .reduce(BigDecimal.ZERO, BigDecimal::max)
                .multiply(ROUNDING);
        int[] next = new int[items.size() + 1];
        next[items.size()] = items.size();
        boolean[] parts = new boolean[items.size() + 1];
        parts[items.size()] = true;
        for (int i = items.size() - 1; i >= 0; i--) {
            BigDecimal sum = BigDecimal.ZERO;
            BigDecimal wanted = items.get(i).value();
            for (int end = i + 2; items.get(i).open() && !parts[i] && end <= items.size(); end++) {
                sum = sum.add(items.get(end - 1).value());
                parts[i] = parts[end] && wanted.subtract(sum).abs().compareTo(allowed) <= 0;
                next[i] = parts[i] ? end : next[i];
                if (sum.compareTo(wanted.add(allowed)) > 0) {
                    break;
                }
            }
        }
        if (!parts[0]) {
            return Optional.empty();
        }
        List<Item> sums = new ArrayList<>();
        boolean several = false;
        for (int i = 0; i < items.size(); i = next[i]) {
            sums.add(items.get(i));
            several = several || next[i] - i > 2;
        }
        return sums.size() > 1 && several ? Optional.of(sums) : Optional.empty();
    }

    /** Whether a figure is the sum of at least so many that follow. */
    static boolean isSumOfNext(BigDecimal figure, Iterable<BigDecimal> following, int least) {
        BigDecimal sum = BigDecimal.ZERO;
        int count = 0;
        for (BigDecimal next : following) {
            sum = sum.add(next);
            if (++count >= least
                    && figure.subtract(sum).abs().compareTo(figure.abs().multiply(ROUNDING)) <= 0) {
                return true;
            }
            if (sum.compareTo(figure) > 0) {
                return false;
            }
        }
        return false;
    }

    /** Whether two sums are the same but for rounding to a thousandth. */
    static boolean isNear(BigDecimal one, BigDecimal other) {
        return one.subtract(other).abs().compareTo(NEAR.max(one.abs().movePointLeft(3))) <= 0;
    }
}
