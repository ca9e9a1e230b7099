package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Decides what a row of words without an amount is: a phase, an ingredient, a title or a remark. Not thread-safe.
 *
 * @param phasesNamed whether rows or a column name phases in a form that can be nothing else
 */
record LoneRows(RowSight sight, boolean phasesNamed) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final int LONGEST_HEADING = 40;

    /** Words that stand in no column of names. */
    RowKind unnamedText(Row line) {
        boolean explicit = RowWords.isPhaseAlone(line.text())
                || RowWords.isPhaseAlone(line.phase())
                || RowWords.isLettered(line.text());
        boolean band = isBand(line) && (explicit || !phasesNamed && !Talk.is(line.text()));
        if (band && !explicit && sight.table.heads().isEmpty() && !sight.above.hasLine()) {
            return RowKind.TITLE;
        }
        return band || RowWords.isPhaseAlone(line.phase()) ? RowKind.PHASE : RowKind.NOTE;
    }

    RowKind named(Row line, boolean known) {
        String name = RowSight.name(line);
        boolean unreadable = line.figures().stream().anyMatch(figure -> figure.kind() == Figure.Kind.UNREADABLE);
        if (unreadable && !known && (sight.above.afterTotal() || SumRows.isNear(sight.above.all(), HUNDRED))) {
            return RowKind.NOTE;
        }
        if (unreadable || known) {
            return RowKind.LINE;
        }
        if (RowWords.isPhaseAlone(name)) {
            return sight.isBehindAll(line) ? RowKind.NOTE : RowKind.PHASE;
        }
        if (sight.isAnnouncement(line)) {
            return RowKind.PHASE;
        }
        boolean work = !PhaseName.of(name).instruction().isEmpty() && !sight.isLineBelow(line.place());
        if (Talk.is(name) || work) {
            return RowKind.NOTE;
        }
        boolean sentence = name.length() > LONGEST_HEADING;
        if (isCounted(line) && !sentence) {
            return RowKind.LINE;
        }
        return loneName(line, sentence || name.endsWith(".") || name.matches("\\d+[.)].*"));
    }

    /** A name that is not known without an amount: an ingredient, a phase, a title or a remark, by where it stands. */
    private RowKind loneName(Row line, boolean sentence) {
        boolean alone = sight.isAlone(line);
        boolean more = line.place() < sight.lastLine();
        String first = sight.cells.firstText(line.place());
        if (alone && first.matches("\\d{1,2}\\s*[-–.):]\\s*\\p{L}.{0,30}") && sight.isLineBelow(line.place())) {
            return RowKind.PHASE;
        }
        if (!alone && (!line.cas().isEmpty() || line.names().size() > 1) && more) {
            return RowKind.LINE;
        }
        if (!sight.above.hasLine() && more && sight.table.heads().isEmpty()) {
            return isFirstOfSeveral(line) ? RowKind.PHASE : RowKind.TITLE;
        }
        boolean complete = sight.above.endsWith(RowKind.BLANK) && SumRows.isNear(sight.above.sinceTotal(0), HUNDRED);
        if ((sight.above.afterTotal() || complete) && more && alone && !sentence) {
            return RowKind.TITLE;
        }
        if (!more || sentence || !alone) {
            return RowKind.NOTE;
        }
        if (sight.isLineBelow(line.place()) && (isSetOff(line.place()) || sight.above.hasBarePhase() && !phasesNamed)) {
            return RowKind.PHASE;
        }
        return phasesNamed ? RowKind.NOTE : RowKind.LINE;
    }

    /** Right above a line, with another such name further down and no whole formula between: phases and no titles. */
    private boolean isFirstOfSeveral(Row line) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int place = line.place() + 1; sight.isLineBelow(line.place()) && place <= sight.lastLine(); place++) {
            Row row = sight.asLine(place).orElse(null);
            if (row == null) {
                continue;
            }
            if (sight.isCertainLine(row)) {
                boolean fills = row.figures().stream().anyMatch(figure -> figure.kind() == Figure.Kind.TO_WHOLE);
                sum = fills ? HUNDRED : sum.add(row.figures().get(0).middle());
            } else if (sight.isAlone(row)
                    && !row.names().isEmpty()
                    && !Talk.is(RowSight.name(row))
                    && sight.isLineBelow(place)) {
                return !SumRows.isNear(sum, HUNDRED);
            }
        }
        return false;
    }

    /** Whether the columns of phases or of numbers count this row among the ingredients. */
    private boolean isCounted(Row line) {
        boolean phased = !line.phase().isEmpty() && !line.phase().equals("-");
        boolean number = !sight.table.text(line.place(), Meaning.NUMBER).isEmpty();
        return (phased || number) && !sight.above.afterTotal() && sight.above.hasLine();
    }

    /** One text in front of the column of names, right above a line: the name of a phase over the width of the sight.table. */
    private boolean isBand(Row line) {
        int nameAt =
                sight.table.names().isEmpty() ? 0 : sight.table.names().get(0).place();
        String first = sight.cells.firstText(line.place());
        boolean inFront = IntStream.range(0, nameAt)
                .anyMatch(place ->
                        sight.table.grid().cell(line.place(), place).text().equals(first));
        return !first.isEmpty() && inFront && line.text().equals(first) && sight.isLineBelow(line.place());
    }

    /** Whether a row looks like a heading: the first one, or after an empty row, or ended by a colon. */
    private boolean isSetOff(int place) {
        String first = sight.cells.firstText(place);
        return !sight.above.hasLine()
                || sight.above.endsWith(RowKind.BLANK)
                || sight.above.endsWith(RowKind.SUBTOTAL)
                || first.endsWith(":")
                || first.equals(first.toUpperCase(Locale.ROOT));
    }
}
