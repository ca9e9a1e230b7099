package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** What speaks against a line being an ingredient: it stands behind the total, is the sum of others, or reads like talk. */
record LineDoubts(Table table, List<Row> segment, int main, Terms terms) {
    private static final int LOOKED_AT = 60;
    private static final BigDecimal SAME = new BigDecimal("0.0005");

    List<Flag> of(Row line) {
        List<Flag> flags = new ArrayList<>();
        boolean known = line.names().stream().anyMatch(terms.knownName());
        if (isBehindTotal(line)) {
            flags.add(Flag.doubt("This stands behind the total; it is perhaps no part of the formula."));
        }
        if (!known && isSum(line)) {
            flags.add(Flag.doubt("This is as much as the lines above together; it is perhaps a total."));
        }
        if (mayHeadPhase(line)) {
            flags.add(Flag.doubt("This is as much as lines below together; it is perhaps a phase with its sum."));
        }
        if (!known && line.names().stream().anyMatch(name -> Talk.is(name) || name.split("\\s+").length > 9)) {
            flags.add(Flag.doubt("This reads like a remark; it is perhaps no ingredient."));
        }
        return flags;
    }

    private boolean isBehindTotal(Row line) {
        boolean lines = false;
        boolean total = false;
        for (Row row : segment) {
            if (row == line) {
                return total;
            }
            lines = lines || row.kind() == RowKind.LINE;
            total = total || lines && row.kind() == RowKind.TOTAL;
        }
        return false;
    }

    private boolean isSum(Row line) {
        BigDecimal value = figure(line);
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal since = BigDecimal.ZERO;
        int count = 0;
        for (Row row : segment) {
            if (row == line) {
                return value.signum() > 0 && count > 1 && (isNear(value, sum) || isNear(value, since));
            }
            if (row.kind() == RowKind.PHASE) {
                since = BigDecimal.ZERO;
            }
            if (row.kind() == RowKind.LINE) {
                sum = sum.add(figure(row));
                since = since.add(figure(row));
                count++;
            }
        }
        return false;
    }

    /** Whether it is doubtful that a row is a line at all. */
    boolean mayBeNone(Row line) {
        return line.names().isEmpty() || !of(line).isEmpty();
    }

    /** Whether a line that is no known material may head a phase with its sum. */
    boolean mayHeadPhase(Row line) {
        List<BigDecimal> following = segment.subList(segment.indexOf(line) + 1, segment.size()).stream()
                .filter(row -> row.kind() == RowKind.LINE)
                .limit(LOOKED_AT)
                .map(this::figure)
                .toList();
        return figure(line).signum() > 0
                && line.names().stream().noneMatch(terms.knownName())
                && SumRows.isSumOfNext(figure(line), following, 2);
    }

    private BigDecimal figure(Row row) {
        return main < row.figures().size() ? row.figures().get(main).middle() : BigDecimal.ZERO;
    }

    private static boolean isNear(BigDecimal one, BigDecimal other) {
        return one.subtract(other).abs().compareTo(SAME) <= 0;
    }
}
