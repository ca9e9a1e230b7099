package stillroom.formulary.imports;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Tables with words and figures that nothing shows to be a formula: lists of equipment, revisions, steps of the work. */
final class Stray {
    private static final int MOST = 12;

    private Stray() {}

    /**
     * Whether nothing speaks for a formula: no name of a material, no unit, no total, no phase, nothing but a few whole numbers.
     */
    static boolean is(ReadFormula formula, List<Row> rows, Terms terms) {
        boolean decided =
                !terms.guidance().columns().isEmpty() || terms.guidance().unit().isPresent();
        boolean unit = formula.unit().filter(one -> one != Unit.PART).isPresent();
        boolean known =
                formula.lines().stream().flatMap(line -> line.names().stream()).anyMatch(terms.knownName());
        boolean nameless = formula.lines().stream().allMatch(line -> line.name().isEmpty());
        boolean summed = rows.stream().anyMatch(row -> row.kind() == RowKind.TOTAL && row.hasAmount());
        boolean phases = formula.lines().stream().anyMatch(line -> !line.phase().isEmpty());
        return !decided && (nameless || !unit && !known && !summed && !phases && isCounting(rows));
    }

    /** A few whole numbers count pieces, steps or revisions; amounts have decimals, or there are many of them. */
    private static boolean isCounting(List<Row> rows) {
        List<Figure> figures = rows.stream()
                .filter(row -> row.kind() == RowKind.LINE)
                .flatMap(row -> row.figures().stream())
                .filter(Figure::isAmount)
                .toList();
        return figures.size() <= MOST
                && figures.stream()
                        .allMatch(figure -> figure.isNumber()
                                && figure.middle().stripTrailingZeros().scale() <= 0);
    }

    /** What is said of them, if there are any. */
    static Optional<Flag> flag(List<ReadFormula> strays, boolean alone) {
        if (strays.isEmpty()) {
            return Optional.empty();
        }
        String rows = strays.stream()
                .map(stray -> (stray.lines().get(0).row() + 1) + " to "
                        + (stray.lines().get(stray.lines().size() - 1).row() + 1))
                .collect(Collectors.joining(", "));
        String said = "Rows " + rows
                + " hold words and figures, but no name of a material, no unit and no total; they are taken for no formula.";
        return Optional.of(alone ? Flag.doubt(said) : Flag.note(said));
    }
}
