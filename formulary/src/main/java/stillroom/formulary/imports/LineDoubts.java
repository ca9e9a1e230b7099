package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** What speaks against a line being an ingredient: it stands behind the total, is the sum of others, or reads like talk. */
final class LineDoubts {
    private static final int LOOKED_AT = 60;
    private static final int LONGEST_NAME = 9;
    private static final BigDecimal SAME = new BigDecimal("0.0005");

    private final int main;
    private final Unit unit;
    private final Terms terms;
    private final List<Row> lines;
    private final boolean closes;
    private final Map<Row, List<Flag>> flags = new IdentityHashMap<>();
    private final Map<Row, Boolean> heads = new IdentityHashMap<>();

    LineDoubts(List<Row> segment, int main, Unit unit, Terms terms) {
        this.main = main;
        this.unit = unit;
        this.terms = terms;
        this.lines = segment.stream().filter(row -> row.kind() == RowKind.LINE).toList();
        this.closes = closes(segment);
        judge(segment);
    }

    /** Whether all lines together make 100 or the total that is stated: then none of them is the sum of others. */
    private boolean closes(List<Row> segment) {
        BigDecimal sum = lines.stream().map(this::figure).reduce(BigDecimal.ZERO, BigDecimal::add);
        return isNear(sum, BigDecimal.valueOf(100))
                || segment.stream()
                        .anyMatch(row ->
                                row.kind() == RowKind.TOTAL && figure(row).signum() > 0 && isNear(sum, figure(row)));
    }

    /** Downwards once, with what the lines come to so far. */
    private void judge(List<Row> segment) {
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal since = BigDecimal.ZERO;
        int count = 0;
        boolean total = false;
        for (Row row : segment) {
            total = total || count > 0 && row.kind() == RowKind.TOTAL;
            since = row.kind() == RowKind.PHASE ? BigDecimal.ZERO : since;
            if (row.kind() == RowKind.LINE) {
                BigDecimal value = figure(row);
                boolean same = value.signum() > 0 && count > 1 && (isNear(value, sum) || isNear(value, since));
                flags.put(row, judged(row, count, total, same));
                sum = sum.add(value);
                since = since.add(value);
                count++;
            }
        }
    }

    private List<Flag> judged(Row line, int place, boolean behindTotal, boolean isSum) {
        List<Flag> said = new ArrayList<>();
        boolean known = line.names().stream().anyMatch(terms.knownName());
        if (behindTotal) {
            said.add(Flag.doubt("This stands behind the total; it is perhaps no part of the formula."));
        }
        if (!known && isSum && !closes) {
            said.add(Flag.doubt("This is as much as the lines above together; it is perhaps a total."));
        }
        if (!known && !closes && isSumOfNext(line, place)) {
            heads.put(line, true);
            said.add(Flag.doubt("This is as much as lines below together; it is perhaps a phase with its sum."));
        }
        if (!known
                && line.names().stream().anyMatch(name -> Talk.is(name) || name.split("\\s+").length > LONGEST_NAME)) {
            said.add(Flag.doubt("This reads like a remark; it is perhaps no ingredient."));
        }
        return said;
    }

    private boolean isSumOfNext(Row line, int place) {
        List<BigDecimal> following = lines.subList(place + 1, Math.min(place + 1 + LOOKED_AT, lines.size())).stream()
                .map(this::figure)
                .toList();
        return figure(line).signum() > 0 && SumRows.isSumOfNext(figure(line), following, 2);
    }

    List<Flag> of(Row line) {
        return flags.getOrDefault(line, List.of());
    }

    /** Whether it is doubtful that some row that was taken for a line is one. */
    boolean any() {
        return lines.stream().anyMatch(line -> line.names().isEmpty() || !of(line).isEmpty());
    }

    /** Whether a line that is no known material may head a phase with its sum. */
    boolean mayHeadPhase(Row line) {
        return heads.containsKey(line);
    }

    private BigDecimal figure(Row row) {
        return main < row.figures().size() ? row.figures().get(main).middleIn(unit) : BigDecimal.ZERO;
    }

    private static boolean isNear(BigDecimal one, BigDecimal other) {
        return one.subtract(other).abs().compareTo(SAME) <= 0;
    }
}
