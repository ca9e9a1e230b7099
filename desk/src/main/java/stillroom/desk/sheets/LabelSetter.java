package stillroom.desk.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.labels.NetContent;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Pages;
import stillroom.formulary.label.Durability;
import stillroom.formulary.label.Label;
import stillroom.formulary.label.LabelSheet;
import stillroom.formulary.label.LabelWarning;
import stillroom.formulary.label.LetterHeights;

/** Sets a label in its size with the largest letters that fit, never smaller than its market allows. */
final class LabelSetter {
    /** Height of the lowest figure in the font, as a share of the font size; a test measures the outline. */
    private static final double CAPITALS = 0.69;

    private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;
    private static final double LARGEST_POINTS = 9;

    /** Below this nobody reads it; our own floor where the market has none. */
    private static final double SMALLEST_POINTS = 4.5;

    private static final double STEP = 0.25;

    private final Pages pages;
    private final LetterHeights heights;

    LabelSetter(Pages pages, LetterHeights heights) {
        this.pages = pages;
        this.heights = heights;
    }

    /** The file, or nothing where the text does not fit in letters that may be that small. */
    Optional<byte[]> set(Label label, LabelSheet sheet, boolean demonstration) {
        LabelPrint print = print(label, sheet, demonstration);
        double floor = heights.ofIngredients(label.market())
                .map(height -> points(height.millimetres()))
                .orElse(SMALLEST_POINTS);
        for (double size = Math.max(LARGEST_POINTS, floor); size >= floor; size -= STEP) {
            byte[] file = Pdf.of(pages.render("sheets/label.jte", Map.of("page", print.at(size))));
            if (Sheets.pageCount(file) == 1) {
                return Optional.of(file);
            }
        }
        return Optional.empty();
    }

    private LabelPrint print(Label label, LabelSheet sheet, boolean demonstration) {
        List<String> sentences = new ArrayList<>();
        label.warnings().stream()
                .map(LabelWarning::text)
                .filter(text -> !text.isBlank())
                .forEach(sentences::add);
        sentences.addAll(label.precautions());
        double content = NetContent.figure(label.netContent())
                .flatMap(figure -> heights.ofContent(label.market(), figure))
                .map(height -> points(height.millimetres()))
                .orElse(LARGEST_POINTS);
        return new LabelPrint(
                label.productName(),
                label.function(),
                label.ingredientText(),
                sentences,
                label.netContent(),
                label.batchCode(),
                label.responsiblePerson(),
                label.durability()
                        .flatMap(Durability::monthsAfterOpening)
                        .map(String::valueOf)
                        .orElse(""),
                label.durability()
                        .flatMap(Durability::bestBefore)
                        .map(day -> "Best used before the end of " + Format.day(day))
                        .orElse(""),
                demonstration,
                sheet.widthMillimetres(),
                sheet.heightMillimetres(),
                Math.max(content, SMALLEST_POINTS),
                LARGEST_POINTS);
    }

    private static double points(double capitalMillimetres) {
        return capitalMillimetres * POINTS_PER_MILLIMETRE / CAPITALS;
    }
}
