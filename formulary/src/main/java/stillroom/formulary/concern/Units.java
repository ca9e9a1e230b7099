package stillroom.formulary.concern;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where the filled units of a batch are. All in units.
 *
 * @param filled into containers
 * @param out sold or given away, less what came back
 * @param returned came back from somebody
 * @param withdrawn gone, and known to be gone
 * @param byBook what should stand on the shelf
 * @param counted what stood there at the last count, less and plus what moved since; none where nobody counted
 * @param at by whom they were got, how many each still has; those that are nowhere named stand under an empty name
 */
public record Units(
        int filled,
        int out,
        int returned,
        int withdrawn,
        int byBook,
        Optional<Integer> counted,
        Map<String, Integer> at) {
    public Units {
        at = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(at));
    }

    public static Units of(int filled, Concerns concerns) {
        List<Entry<Concern.Moved>> moves = concerns.moves();
        int returned = sum(moves, Concern.Move.RETURN);
        int out = sum(moves, Concern.Move.SALE) + sum(moves, Concern.Move.GIFT) - returned;
        int withdrawn = sum(moves, Concern.Move.WITHDRAWN);
        return new Units(filled, out, returned, withdrawn, filled - out - withdrawn, counted(concerns), at(moves));
    }

    private static Optional<Integer> counted(Concerns concerns) {
        return concerns.counts().stream()
                .reduce((earlier, later) -> later)
                .map(count -> count.concern().found()
                        + concerns.moves().stream()
                                .filter(move -> move.number() > count.number())
                                .mapToInt(move -> -offShelf(move.concern()))
                                .sum());
    }

    /** How many units a move takes off the shelf. */
    private static int offShelf(Concern.Moved moved) {
        return switch (moved.move()) {
            case SALE, GIFT, WITHDRAWN -> moved.units();
            case RETURN -> -moved.units();
        };
    }

    private static Map<String, Integer> at(List<Entry<Concern.Moved>> moves) {
        Map<String, Integer> at = new LinkedHashMap<>();
        for (Entry<Concern.Moved> move : moves) {
            if (move.concern().move() != Concern.Move.WITHDRAWN) {
                at.merge(move.concern().to().strip(), offShelf(move.concern()), Integer::sum);
            }
        }
        at.values().removeIf(units -> units == 0);
        return at;
    }

    private static int sum(List<Entry<Concern.Moved>> moves, Concern.Move kind) {
        return moves.stream()
                .map(Entry::concern)
                .filter(move -> move.move() == kind)
                .mapToInt(Concern.Moved::units)
                .sum();
    }

    /** What stands on the shelf: as counted, else by the book. */
    public int onShelf() {
        return counted.orElse(byBook);
    }

    /** Units whose place is known: counted on the shelf, out to somebody named, or known to be gone. */
    public int accountedFor() {
        int named = at.entrySet().stream()
                .filter(one -> !one.getKey().isEmpty())
                .mapToInt(Map.Entry::getValue)
                .sum();
        return counted.orElse(0) + named + withdrawn;
    }

    /** Accounted for in percent of what was filled; none where nothing was [%]. */
    public Optional<BigDecimal> reconciledPercent() {
        return filled > 0
                ? Optional.of(BigDecimal.valueOf(100L * accountedFor())
                        .divide(BigDecimal.valueOf(filled), MathContext.DECIMAL32))
                : Optional.empty();
    }
}
