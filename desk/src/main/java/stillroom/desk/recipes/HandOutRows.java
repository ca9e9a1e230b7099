package stillroom.desk.recipes;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import stillroom.desk.recipes.HandOutPage.LineRow;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.material.Material;

/** The lines of a formula as rows of the page. */
final class HandOutRows {
    private HandOutRows() {}

    static List<LineRow> of(Handing handing) {
        return handing.version().formula().lines().stream()
                .map(line -> row(handing, line))
                .toList();
    }

    private static LineRow row(Handing handing, Line line) {
        Optional<Material> card = handing.book().material(line.materialKey());
        return new LineRow(
                line.id(),
                card.map(Material::name).orElse(line.materialKey()),
                line.amount()
                        .match(
                                fixed -> fixed.percent() + " %",
                                () -> "q.s. to 100",
                                to -> "about " + to.expected() + " %, up to "
                                        + (to.reading() == ReadingKind.PH ? "the pH" : "a reading")),
                card.flatMap(Strengths::middle).map(BigDecimal::toPlainString).orElse(""));
    }
}
