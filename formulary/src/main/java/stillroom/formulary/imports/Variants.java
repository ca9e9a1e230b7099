package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Tells whether several columns of amounts are the same formula in several units, or several formulas. */
record Variants(Table table, List<Row> rows) {
    private static final double ALIKE = 0.02;

    List<Variant> find() {
        List<Column> columns = table.columns(Meaning.AMOUNT);
        int count = Math.max(1, columns.size());
        List<Integer> used = withoutMeasures(
                IntStream.range(0, count).filter(this::isUsed).boxed().toList());
        if (used.size() < 2) {
            return List.of(new Variant(used.isEmpty() ? 0 : used.get(0), List.of(), "", false, false));
        }
        List<Integer> present =
                used.stream().filter(place -> !isOld(columns, place)).toList();
        int main = main(columns, present.isEmpty() ? used : present);
        List<Integer> same = used.stream()
                .filter(place -> place == main
                        || isCheck(columns, main, place)
                                && (!isOld(columns, place) || !isShare(columns.get(place), place)))
                .toList();
        List<Integer> others =
                used.stream().filter(place -> !same.contains(place)).toList();
        boolean one = others.stream().allMatch(place -> isOld(columns, place)) && !isOld(columns, main);
        List<Variant> variants = new ArrayList<>();
        variants.add(
                variant(columns, main, without(same, main), !others.isEmpty()).alone(one));
        for (int other : others) {
            variants.add(variant(columns, other, List.of(), true));
        }
        return variants;
    }

    private static boolean isOld(List<Column> columns, int place) {
        return place < columns.size()
                && columns.size() > 1
                && OldColumns.isOld(columns.get(place).heading());
    }

    /** Cups, spoons and handfuls beside masses are the same amounts once more. */
    private List<Integer> withoutMeasures(List<Integer> used) {
        List<Integer> weighed = used.stream().filter(this::isWeighed).toList();
        return weighed.isEmpty() ? used : weighed;
    }

    private boolean isWeighed(int place) {
        long measures = lines().stream()
                .map(row -> row.figures().get(place))
                .filter(figure ->
                        figure.unit().filter(unit -> unit == Unit.VOLUME).isPresent()
                                || figure.kind() == Figure.Kind.UNREADABLE)
                .count();
        long all = lines().stream()
                .filter(row -> row.figures().get(place).kind() != Figure.Kind.NONE)
                .count();
        return measures * 2 <= all;
    }

    private static List<Integer> without(List<Integer> places, int main) {
        return places.stream().filter(place -> place != main).toList();
    }

    private Variant variant(List<Column> columns, int main, List<Integer> checks, boolean many) {
        return new Variant(main, checks, columns.get(main).heading(), many, isOld(columns, main));
    }

    /** A share before a mass: it says the same at every batch size. */
    private int main(List<Column> columns, List<Integer> used) {
        return used.stream()
                .filter(place -> isShare(columns.get(place), place))
                .findFirst()
                .or(() -> used.stream()
                        .filter(place -> columns.get(place).unit().isEmpty() && makesHundred(place))
                        .findFirst())
                .orElse(used.get(0));
    }

    private boolean makesHundred(int place) {
        boolean fills =
                lines().stream().anyMatch(row -> row.figures().get(place).kind() == Figure.Kind.TO_WHOLE);
        BigDecimal sum =
                lines().stream().map(row -> row.figures().get(place).middle()).reduce(BigDecimal.ZERO, BigDecimal::add);
        return fills || SumRows.isNear(sum, BigDecimal.valueOf(100));
    }

    private boolean isShare(Column column, int place) {
        return column.unit().or(() -> cellUnit(place)).map(Unit::isShare).orElse(false);
    }

    private Optional<Unit> cellUnit(int place) {
        return lines().stream()
                .flatMap(row -> row.figures().get(place).unit().stream())
                .findFirst();
    }

    /** A mass beside a share is the same formula even where it does not agree: then it is a mistake to be shown. */
    private boolean isCheck(List<Column> columns, int main, int place) {
        boolean mainShare = isShare(columns.get(main), main);
        boolean share = isShare(columns.get(place), place);
        return mainShare && !share && hasUnit(columns, place) || agree(main, place);
    }

    private boolean hasUnit(List<Column> columns, int place) {
        return columns.get(place).unit().or(() -> cellUnit(place)).isPresent();
    }

    private boolean agree(int main, int place) {
        List<Double> ratios = new ArrayList<>();
        int alone = 0;
        for (Row row : lines()) {
            BigDecimal one = row.figures().get(main).middle();
            BigDecimal other = row.figures().get(place).middle();
            if (row.figures().get(main).isNumber()
                    && row.figures().get(place).isNumber()
                    && one.signum() > 0
                    && other.signum() > 0) {
                ratios.add(other.doubleValue() / one.doubleValue());
            } else if (row.figures().get(main).isNumber()
                    != row.figures().get(place).isNumber()) {
                alone++;
            }
        }
        if (ratios.size() < 2) {
            return false;
        }
        double middle = ratios.stream().sorted().toList().get(ratios.size() / 2);
        long near = ratios.stream()
                .filter(ratio -> Math.abs(ratio / middle - 1) <= ALIKE)
                .count();
        if (near == ratios.size() && ratios.size() > 2) {
            return true;
        }
        return near * 4 >= ratios.size() * 3 && alone * 2 <= ratios.size();
    }

    private boolean isUsed(int place) {
        return lines().stream()
                .anyMatch(row ->
                        place < row.figures().size() && row.figures().get(place).isAmount());
    }

    private List<Row> lines() {
        return rows.stream()
                .filter(row -> row.kind() == RowKind.LINE && !row.figures().isEmpty())
                .toList();
    }
}
