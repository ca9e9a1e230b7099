package stillroom.formulary.imports;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Decides what a row is: by its words, by its figures, then by the place in which it stands. Not thread-safe. */
final class RowJudge {
    private static final Pattern PART_OF_A_LINE = Pattern.compile(
            "[-(]*\\s*(of which|thereof|davon|dont|di cui|de los cuales|do qual|waarvan|heraf|varav)\\b.*");

    private final RowSight sight;
    private final RowTotals totals;
    private final LoneRows lone;
    private boolean inMethod;
    private String phase = "";

    /** @param lines all rows of the table, read as lines */
    RowJudge(RowSight sight, List<Row> lines) {
        this.sight = sight;
        this.totals = new RowTotals(sight, lines);
        this.lone = new LoneRows(sight, lines.stream().anyMatch(this::namesPhase));
    }

    /** A row, or the column of phases in it, that names a phase in a form that can be nothing else. */
    private boolean namesPhase(Row line) {
        boolean column =
                line.hasAmount() && !line.phase().isEmpty() && !line.phase().equals("-");
        String text = line.names().isEmpty() ? line.text() : RowSight.name(line);
        return column
                || !sight.table.heads().contains(line.place())
                        && (RowWords.isPhaseNumbered(text)
                                || RowWords.isPhaseLetter(text) && text.matches(".*\\p{L}.*"));
    }

    RowKind kind(Row line) {
        RowKind kind = judged(line);
        if (RowWords.isMethod(sight.cells.firstText(line.place())) && !line.hasAmount()) {
            inMethod = true;
        }
        boolean phased = kind == RowKind.LINE && !line.phase().isEmpty();
        phase = kind == RowKind.PHASE ? Folding.of(RowSight.name(line)) : phased ? Folding.of(line.phase()) : phase;
        return kind;
    }

    private RowKind judged(Row line) {
        if (line.text().isEmpty()) {
            return RowKind.BLANK;
        }
        if (inMethod) {
            return RowKind.NOTE;
        }
        boolean known = sight.isKnown(line);
        return byWords(line, known)
                .or(() -> known ? Optional.empty() : totals.of(line))
                .orElseGet(() -> line.hasAmount() ? withAmount(line, known) : withoutAmount(line, known));
    }

    private RowKind withAmount(Row line, boolean known) {
        if (RowSight.name(line).isEmpty()) {
            return totals.unnamed(line);
        }
        if (!known && totals.isTotalByValue(line)) {
            return RowKind.TOTAL;
        }
        return !known && totals.isBehindLast(line) ? RowKind.NOTE : RowKind.LINE;
    }

    private RowKind withoutAmount(Row line, boolean known) {
        return RowSight.name(line).isEmpty() ? lone.unnamedText(line) : lone.named(line, known);
    }

    /** What the words of a row say. */
    private Optional<RowKind> byWords(Row line, boolean known) {
        String first = sight.cells.firstText(line.place());
        String name = RowSight.name(line);
        if (RowWords.isTotal(first) || RowWords.isTotal(name)) {
            return Optional.of(totals.named(line, phase));
        }
        if (PART_OF_A_LINE.matcher(Folding.of(name)).matches() || RowWords.isList(first)) {
            return Optional.of(RowKind.NOTE);
        }
        if (!known && (RowWords.isFact(first) || RowWords.isFact(name)) && !name.isEmpty()) {
            return Optional.of(RowWords.title(first).isPresent() ? RowKind.TITLE : RowKind.NOTE);
        }
        boolean phaseName = RowWords.isPhase(name)
                || RowWords.isPhaseAlone(name) && totals.isSumOfNext(line)
                || RowWords.isPhaseLetter(name) && name.matches(".*\\p{L}.*");
        if (known || !phaseName || isPhraseOfALine(line)) {
            return Optional.empty();
        }
        return Optional.of(sight.isBehindAll(line) ? RowKind.NOTE : RowKind.PHASE);
    }

    /** A column of phases beside it says that this is an ingredient, whatever it is called. */
    private boolean isPhraseOfALine(Row line) {
        return sight.table.column(Meaning.PHASE).isPresent() && !line.phase().isEmpty() && line.hasAmount();
    }
}
