package stillroom.desk.imports;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Frame.Section;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.imports.Cell;
import stillroom.formulary.imports.Column;
import stillroom.formulary.imports.Flag;
import stillroom.formulary.imports.Grid;
import stillroom.formulary.imports.Mark;
import stillroom.formulary.imports.Meaning;
import stillroom.formulary.imports.RowKind;
import stillroom.formulary.imports.Unit;

/**
 * A sheet as it was understood, with every guess to be changed.
 *
 * @param found the mark that the sheet's own figures were read with, behind a colon; empty where none decides
 * @param said what holds for the whole sheet
 * @param problems why it could not be stored
 */
public record SheetPage(
        Frame frame,
        String path,
        String back,
        String file,
        String sheet,
        boolean stored,
        String mark,
        String found,
        String unit,
        boolean turned,
        List<ColumnField> columns,
        List<SettledFormula> formulas,
        List<SettledMaterial> materials,
        List<String> cards,
        List<SheetRow> rows,
        List<String> said,
        List<String> problems) {
    private static final int ROWS_SHOWN = 150;
    private static final int CELLS_SHOWN = 12;

    public SheetPage {
        columns = List.copyOf(columns);
        formulas = List.copyOf(formulas);
        materials = List.copyOf(materials);
        cards = List.copyOf(cards);
        rows = List.copyOf(rows);
        said = List.copyOf(said);
        problems = List.copyOf(problems);
    }

    /** A column and what it is taken for. */
    public record ColumnField(int place, String label, String meaning) {}

    /** A row of the sheet as it stands. */
    public record SheetRow(int place, String kind, List<String> cells) {}

    static SheetPage of(Desk desk, Context request, Upload upload, HeldSheet sheet, List<String> problems) {
        CardNames cards = CardNames.of(desk.ledger());
        Grid grid = sheet.read().grid();
        Decisions decisions = sheet.decisions();
        return new SheetPage(
                desk.frame(request, "What was understood of " + sheet.file(), Section.PRODUCTS),
                "/import/" + upload.id() + "/sheets/" + sheet.number(),
                "/import/" + upload.id(),
                sheet.file(),
                grid.name(),
                upload.isStored(sheet.number() + "/1") || upload.isStored(sheet.number() + "/m"),
                decisions.of("mark").orElse(""),
                sheet.read().mark().map(mark -> ": " + mark.words()).orElse(""),
                decisions.of("unit").orElse(""),
                grid.turned(),
                columns(grid, sheet.read().columns()),
                SettledFormula.all(sheet, cards),
                SettledMaterial.all(sheet, cards),
                cards.all(),
                rows(grid, sheet),
                sheet.read().flags().stream().map(Flag::sentence).toList(),
                problems);
    }

    private static List<ColumnField> columns(Grid grid, List<Column> columns) {
        return columns.stream()
                .map(column -> new ColumnField(
                        column.place(),
                        (grid.turned() ? "Row " + (column.place() + 1) : "Column " + Grid.letters(column.place()))
                                + (column.heading().isBlank() ? "" : ", \"" + shortened(column.heading()) + "\""),
                        column.meaning().name()))
                .toList();
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 39) + "…";
    }

    private static List<SheetRow> rows(Grid grid, HeldSheet sheet) {
        List<SheetRow> rows = new ArrayList<>();
        for (int row = 0; row < Math.min(grid.height(), ROWS_SHOWN); row++) {
            List<String> cells = new ArrayList<>();
            for (int column = 0; column < Math.min(grid.width(), CELLS_SHOWN); column++) {
                Cell cell = grid.cell(row, column);
                cells.add(
                        shortened(cell.is(Cell.Trait.SHOWN_AS_PERCENT) ? cell.text() + " (shown as %)" : cell.text()));
            }
            RowKind kind = sheet.read().rows().getOrDefault(row, RowKind.BLANK);
            rows.add(new SheetRow(row, kind.name(), cells));
        }
        return rows;
    }

    public List<Choice> marks() {
        return choices("as found" + found, Mark.values(), Mark::name, Mark::words);
    }

    public List<Choice> units() {
        List<Unit> units =
                List.of(Unit.PERCENT, Unit.GRAM, Unit.KILOGRAM, Unit.MILLIGRAM, Unit.OUNCE, Unit.PART, Unit.FRACTION);
        String read = formulas.stream().map(SheetPage::unit).distinct().collect(Collectors.joining(", "));
        return choices(
                "as found" + (read.isEmpty() ? "" : ": " + read), units.toArray(new Unit[0]), Unit::name, Unit::words);
    }

    public List<Choice> turns() {
        return List.of(
                new Choice("", turned ? "as found" : "as found: one below the other"),
                new Choice("no", "one below the other"),
                new Choice("yes", "side by side"));
    }

    public List<Choice> meanings() {
        return Arrays.stream(Meaning.values())
                .map(one -> new Choice(one.name(), one.words()))
                .toList();
    }

    public List<Choice> kinds() {
        return Arrays.stream(RowKind.values())
                .map(one -> new Choice(one.name(), one.words()))
                .toList();
    }

    public List<Choice> types() {
        return Arrays.stream(ProductType.values())
                .map(one -> new Choice(one.name(), one.words()))
                .toList();
    }

    private static <E> List<Choice> choices(
            String first,
            E[] all,
            java.util.function.Function<E, String> value,
            java.util.function.Function<E, String> words) {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice("", first));
        for (E one : all) {
            choices.add(new Choice(value.apply(one), words.apply(one)));
        }
        return choices;
    }

    /** How the unit of a formula was told. */
    public static String unit(SettledFormula formula) {
        return formula.read().unit().map(Unit::words).orElse("not known");
    }
}
