package stillroom.ledger.imports;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import stillroom.formulary.imports.Cell;
import stillroom.formulary.imports.Grid;

/**
 * A formula of the corpus laid out in another way: other columns in another order, other headings or none, phases in rows or in a
 * column, other units and marks, notes and totals put between. What it means stays known.
 */
final class Relaid {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** In what the amounts are given. */
    private enum In {
        NUMBER,
        TEXT_WITH_SIGN,
        AS_PERCENT,
        FRACTION,
        GRAMS,
        GRAMS_IN_CELL,
        KILOS,
        BOTH
    }

    /** Where the phases stand. */
    private enum Phases {
        NONE,
        COLUMN,
        COLUMN_ONCE,
        COLUMN_MERGED,
        ROWS,
        ROWS_IN_FRONT,
        ROWS_WITH_SUM
    }

    private enum Kind {
        NAME,
        AMOUNT,
        SECOND,
        PHASE,
        INCI,
        FUNCTION,
        NOTE,
        NUMBER,
        CODE,
        PRICE,
        MOST,
        ODD_FIGURES,
        RUNNING,
        LEAST,
        DENSITY,
        UNIT
    }

    private final Random random;
    private final In in;
    private final Phases phases;
    private final boolean comma;
    private final boolean textual;
    private final boolean rest;
    private final List<Kind> columns = new ArrayList<>();
    private final List<String> phaseNames;
    private final boolean oddHeadings;
    private final BigDecimal batch;
    private BigDecimal running = BigDecimal.ZERO;
    private final List<List<Cell>> rows = new ArrayList<>();
    private final List<Meant.Line> meant = new ArrayList<>();

    private Relaid(long seed) {
        random = new Random(seed * 7_919L + 13);
        in = In.values()[random.nextInt(In.values().length)];
        phases = Phases.values()[random.nextInt(Phases.values().length)];
        comma = random.nextBoolean();
        textual = random.nextBoolean();
        rest = random.nextInt(3) == 0 && (in == In.NUMBER || in == In.TEXT_WITH_SIGN || in == In.BOTH);
        phaseNames = phaseNames();
        oddHeadings = random.nextInt(6) == 0;
        batch = new BigDecimal(
                List.of("200", "500", "1000", "250", "1500", "80").get(random.nextInt(6)));
    }

    /** @param grid the sheet; @param meant what it means */
    record Sheet(Grid grid, Meant meant, String how) {}

    /**
     * @param formula lines with per cent, of which the first may be "rest"
     * @param inci the INCI name of a material, or the name itself
     */
    static Sheet of(long seed, Meant.Formula formula, UnaryOperator<String> inci) {
        return new Relaid(seed).lay(formula, inci);
    }

    private List<String> phaseNames() {
        String word = RelaidWords.one(List.of("Phase", "Fase", "PHASE", "phase", "Teil"), random);
        List<String> named = new ArrayList<>(RelaidWords.NAMED_PHASES);
        List<String> odd = new ArrayList<>(RelaidWords.ODD_PHASES);
        Collections.shuffle(named, random);
        Collections.shuffle(odd, random);
        return switch (random.nextInt(8)) {
            case 0, 1 -> List.of("A", "B", "C");
            case 2 -> List.of(word + " A", word + " B", word + " C");
            case 3 -> List.of(word + " 1", word + " 2", word + " 3");
            case 4 -> List.of("I", "II", "III");
            case 5 -> List.of("Phase A - water", "Phase B - oils", "Phase C - actives");
            case 6 -> named.subList(0, 3);
            default -> odd.subList(0, 3);
        };
    }

    private static String asNamed(String phase) {
        String plain = phase.matches("[A-C]|I{1,3}") ? "Phase " + phase : phase;
        return plain.substring(0, 1).toUpperCase(Locale.ROOT) + plain.substring(1);
    }

    private Sheet lay(Meant.Formula formula, UnaryOperator<String> inci) {
        columns();
        String title = RelaidWords.one(RelaidWords.TITLES, random);
        above(title);
        headings();
        body(formula, inci);
        below();
        shift();
        String how = in + " " + phases + phaseNames + " " + columns + (rest ? " rest" : "");
        return new Sheet(
                new Grid("Sheet1", rows),
                new Meant("laid out anew", List.of(new Meant.Formula(title, meant)), List.of()),
                how);
    }

    private void columns() {
        columns.add(Kind.NAME);
        columns.add(Kind.AMOUNT);
        if (in == In.BOTH) {
            columns.add(Kind.SECOND);
        }
        if (in == In.GRAMS && random.nextInt(4) == 0) {
            columns.add(Kind.UNIT);
        }
        if (phases.name().startsWith("COLUMN")) {
            columns.add(random.nextInt(columns.size()), Kind.PHASE);
        }
        for (Kind more : List.of(
                Kind.INCI,
                Kind.FUNCTION,
                Kind.NOTE,
                Kind.NUMBER,
                Kind.CODE,
                Kind.PRICE,
                Kind.MOST,
                Kind.RUNNING,
                Kind.LEAST,
                Kind.DENSITY,
                Kind.ODD_FIGURES)) {
            int chance = more == Kind.INCI ? 3 : more.compareTo(Kind.ODD_FIGURES) >= 0 ? 14 : 6;
            if (random.nextInt(chance) == 0) {
                columns.add(more == Kind.NUMBER ? 0 : random.nextInt(columns.size() + 1), more);
            }
        }
        if (random.nextInt(5) == 0) {
            Collections.shuffle(columns, random);
        }
    }

    private void above(String title) {
        if (random.nextInt(4) != 0) {
            row(title);
        }
        for (int i = random.nextInt(3); i > 0; i--) {
            row(RelaidWords.one(RelaidWords.FACTS, random).replace("500", batch.toPlainString()));
        }
        for (int i = random.nextInt(3); i > 0; i--) {
            rows.add(List.of());
        }
    }

    private void headings() {
        if (random.nextInt(8) == 0) {
            return;
        }
        List<Cell> cells = new ArrayList<>();
        for (Kind column : columns) {
            boolean odd = oddHeadings || random.nextInt(14) == 0;
            cells.add(Cell.of(odd ? RelaidWords.unknown(random) : heading(column)));
        }
        rows.add(cells);
        if (random.nextInt(6) == 0) {
            rows.add(List.of());
        }
    }

    private String heading(Kind column) {
        return switch (column) {
            case NAME -> RelaidWords.one(RelaidWords.NAME, random);
            case AMOUNT -> amountHeading();
            case SECOND -> RelaidWords.one(RelaidWords.GRAMS, random);
            case PHASE -> RelaidWords.one(RelaidWords.PHASE, random);
            case INCI -> RelaidWords.one(RelaidWords.INCI, random);
            case FUNCTION -> RelaidWords.one(RelaidWords.FUNCTION, random);
            case NOTE -> RelaidWords.one(List.of("Notes", "Bemerkung", "Remarks", "", "to do"), random);
            case NUMBER -> RelaidWords.one(List.of("No.", "#", "Pos", ""), random);
            case CODE -> RelaidWords.one(List.of("Code", "Art.-Nr.", "RM code", "Réf."), random);
            case PRICE -> RelaidWords.one(List.of("€/kg", "Price per kg", "cost"), random);
            case MOST -> RelaidWords.one(List.of("max. %", "Usage rate", "limit"), random);
            case ODD_FIGURES -> RelaidWords.unknown(random);
            case RUNNING -> RelaidWords.one(List.of("cum.", "running", "added up", "kumuliert"), random);
            case LEAST -> RelaidWords.one(List.of("min %", "from", "min."), random);
            case DENSITY -> RelaidWords.one(List.of("density", "g/ml", "HLB", "SG"), random);
            case UNIT -> RelaidWords.one(List.of("unit", "Einheit", "", "u."), random);
        };
    }

    private String amountHeading() {
        if (in == In.FRACTION || random.nextInt(5) == 0) {
            return RelaidWords.one(RelaidWords.AMOUNT, random);
        }
        if (in == In.KILOS) {
            return RelaidWords.one(List.of("kg", "Menge (kg)", "weight kg"), random);
        }
        return RelaidWords.one(in.name().startsWith("GRAMS") ? RelaidWords.GRAMS : RelaidWords.PERCENT, random);
    }

    private void body(Meant.Formula formula, UnaryOperator<String> inci) {
        List<Meant.Line> lines = formula.lines();
        int before = -1;
        BigDecimal others = BigDecimal.ZERO;
        for (int i = 1; i < lines.size(); i++) {
            others = others.add(new BigDecimal(lines.get(i).amount()));
        }
        BigDecimal sum = BigDecimal.ZERO;
        for (int i = 0; i < lines.size(); i++) {
            int phase = lines.get(i).phase().charAt(6) - 'A';
            BigDecimal percent = i == 0
                    ? HUNDRED.subtract(others)
                    : new BigDecimal(lines.get(i).amount());
            if (phase != before) {
                endPhase(before, sum);
                sum = BigDecimal.ZERO;
                beginPhase(phase, lines, others);
            }
            sum = sum.add(percent);
            line(i, lines.get(i).name(), inci, percent, phase, phase != before);
            before = phase;
            if (random.nextInt(14) == 0) {
                row(RelaidWords.one(RelaidWords.BETWEEN, random));
            }
        }
        endPhase(before, sum);
        total();
    }

    private void beginPhase(int phase, List<Meant.Line> lines, BigDecimal others) {
        String name = phaseNames.get(phase);
        if (phases == Phases.ROWS) {
            put(Kind.NAME, Cell.of(name + (random.nextInt(4) == 0 ? ":" : "")));
        } else if (phases == Phases.ROWS_IN_FRONT) {
            rows.add(List.of(Cell.of(name)));
        } else if (phases == Phases.ROWS_WITH_SUM) {
            BigDecimal sum = BigDecimal.ZERO;
            for (int i = 0; i < lines.size(); i++) {
                if (lines.get(i).phase().charAt(6) - 'A' == phase) {
                    sum = sum.add(
                            i == 0
                                    ? HUNDRED.subtract(others)
                                    : new BigDecimal(lines.get(i).amount()));
                }
            }
            List<Cell> cells = blank();
            cells.set(columns.indexOf(Kind.NAME), Cell.of(name));
            cells.set(columns.indexOf(Kind.AMOUNT), amount(sum));
            rows.add(cells);
        }
    }

    private boolean subtotals() {
        return phaseNames.hashCode() % 4 == 0;
    }

    private void endPhase(int phase, BigDecimal sum) {
        if (phase < 0) {
            return;
        }
        if (subtotals() && !rest && phases != Phases.ROWS_WITH_SUM) {
            List<Cell> cells = blank();
            cells.set(
                    columns.indexOf(Kind.NAME),
                    Cell.of(random.nextBoolean() ? "Subtotal" : "Total " + phaseNames.get(phase)));
            cells.set(columns.indexOf(Kind.AMOUNT), amount(sum));
            rows.add(cells);
        }
        if (random.nextInt(4) == 0) {
            rows.add(List.of());
        }
    }

    private void line(int i, String name, UnaryOperator<String> inci, BigDecimal percent, int phase, boolean first) {
        List<Cell> cells = blank();
        boolean asRest = rest && i == 0;
        running = running.add(percent);
        for (int at = 0; at < columns.size(); at++) {
            cells.set(
                    at,
                    switch (columns.get(at)) {
                        case NAME -> Cell.of(name);
                        case AMOUNT -> asRest ? Cell.of(RelaidWords.one(RelaidWords.REST, random)) : amount(percent);
                        case SECOND -> figure(grams(percent));
                        case PHASE -> phaseCell(phase, first);
                        case INCI -> Cell.of(inci.apply(name));
                        case FUNCTION ->
                            Cell.of(random.nextInt(5) == 0 ? "" : RelaidWords.one(RelaidWords.FUNCTIONS, random));
                        case NOTE -> Cell.of(random.nextInt(3) != 0 ? "" : RelaidWords.one(RelaidWords.NOTES, random));
                        case NUMBER -> figure(BigDecimal.valueOf(i + 1L));
                        case CODE ->
                            Cell.of(
                                    random.nextInt(2) == 0
                                            ? "RM-" + (100 + random.nextInt(900))
                                            : "" + (10000 + random.nextInt(90000)));
                        case PRICE -> figure(BigDecimal.valueOf(100 + random.nextInt(9000), 2));
                        case MOST ->
                            random.nextInt(3) == 0 ? Cell.EMPTY : figure(BigDecimal.valueOf(1L + random.nextInt(30)));
                        case ODD_FIGURES -> figure(BigDecimal.valueOf(1L + random.nextInt(900), 1));
                        case RUNNING -> figure(running);
                        case LEAST ->
                            random.nextInt(3) == 0
                                    ? Cell.EMPTY
                                    : figure(BigDecimal.valueOf(1L + random.nextInt(20), 1));
                        case DENSITY ->
                            random.nextInt(3) == 0
                                    ? Cell.EMPTY
                                    : figure(BigDecimal.valueOf(85L + random.nextInt(40), 2));
                        case UNIT -> Cell.of("g");
                    });
        }
        rows.add(cells);
        meant.add(new Meant.Line(
                name,
                asRest ? "rest" : percent.toPlainString(),
                phases == Phases.NONE ? "" : asNamed(phaseNames.get(phase))));
    }

    private Cell phaseCell(int phase, boolean first) {
        Cell cell = Cell.of(phaseNames.get(phase));
        return switch (phases) {
            case COLUMN_ONCE -> first ? cell : Cell.EMPTY;
            case COLUMN_MERGED -> first ? cell : new Cell(cell.text(), cell.number(), Set.of(Cell.Trait.MERGED));
            default -> cell;
        };
    }

    private BigDecimal grams(BigDecimal percent) {
        return percent.multiply(batch)
                .movePointLeft(2)
                .setScale(4, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
    }

    private Cell amount(BigDecimal percent) {
        return switch (in) {
            case NUMBER, BOTH -> figure(percent);
            case TEXT_WITH_SIGN -> Cell.of(written(percent) + " %");
            case AS_PERCENT ->
                new Cell(
                        written(percent) + "%",
                        Optional.of(percent.movePointLeft(2)),
                        Set.of(Cell.Trait.SHOWN_AS_PERCENT));
            case FRACTION -> figure(percent.movePointLeft(2));
            case GRAMS -> figure(grams(percent));
            case GRAMS_IN_CELL -> Cell.of(written(grams(percent)) + (comma ? " g" : "g"));
            case KILOS -> figure(grams(percent).movePointLeft(3));
        };
    }

    private Cell figure(BigDecimal value) {
        return textual
                ? Cell.of(written(value))
                : new Cell(value.stripTrailingZeros().toPlainString(), Optional.of(value), Set.of());
    }

    private String written(BigDecimal value) {
        String plain = value.stripTrailingZeros().toPlainString();
        return comma ? plain.replace('.', ',') : plain;
    }

    private void total() {
        if (random.nextInt(5) < 2) {
            return;
        }
        List<Cell> cells = blank();
        boolean worded = random.nextInt(4) != 0;
        if (worded) {
            cells.set(
                    columns.indexOf(Kind.NAME),
                    Cell.of(
                            random.nextInt(6) == 0
                                    ? RelaidWords.unknown(random)
                                    : RelaidWords.one(RelaidWords.TOTAL, random)));
        }
        cells.set(columns.indexOf(Kind.AMOUNT), amount(HUNDRED));
        if (in == In.BOTH) {
            cells.set(columns.indexOf(Kind.SECOND), figure(batch));
        }
        rows.add(cells);
        if (random.nextInt(8) == 0) {
            List<Cell> cost = blank();
            cost.set(
                    columns.indexOf(Kind.NAME),
                    Cell.of(RelaidWords.one(List.of("Cost per batch", "pH", "Dichte", "Viscosity", "Loss"), random)));
            cost.set(columns.indexOf(Kind.AMOUNT), figure(BigDecimal.valueOf(300 + random.nextInt(400), 2)));
            rows.add(cost);
        }
    }

    private void below() {
        int kind = random.nextInt(5);
        if (kind == 0) {
            rows.add(List.of());
            row(RelaidWords.one(List.of("Method:", "Procedure", "Herstellung"), random));
        }
        if (kind <= 1) {
            RelaidWords.STEPS.forEach(this::row);
        }
        if (kind == 2) {
            rows.add(List.of());
            row(RelaidWords.one(RelaidWords.FACTS, random));
            row("Page 1 of 2");
        }
    }

    private void shift() {
        if (random.nextInt(8) == 0) {
            rows.replaceAll(row -> {
                List<Cell> shifted = new ArrayList<>(List.of(Cell.EMPTY));
                shifted.addAll(row);
                return shifted;
            });
        }
    }

    private void row(String text) {
        rows.add(List.of(Cell.of(text)));
    }

    private void put(Kind column, Cell cell) {
        List<Cell> cells = blank();
        cells.set(columns.indexOf(column), cell);
        rows.add(cells);
    }

    private List<Cell> blank() {
        return new ArrayList<>(Collections.nCopies(columns.size(), Cell.EMPTY));
    }
}
