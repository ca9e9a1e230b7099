package stillroom.desk.recipes;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.HandOut;
import stillroom.formulary.formula.HandOut.LineWords;
import stillroom.formulary.formula.Line;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Grams;

/** What a recipe tells before its author said otherwise: the notes of the lines, and the usual questions to the reader. */
final class UsualWords {
    private static final Grams SIZE = Grams.of("500");
    private static final Grams STEP = Grams.of("0.1");

    private UsualWords() {}

    static HandOut of(Formula formula, MaterialBook book) {
        Map<String, LineWords> lines = new LinkedHashMap<>();
        for (Line line : formula.lines()) {
            lines.put(line.id(), new LineWords(line.note(), List.of(), differsByMaker(line, book)));
        }
        return new HandOut(SIZE, STEP, lines, false, false);
    }

    /** Surfactants, acids and bases come in strengths that differ from house to house. */
    private static boolean differsByMaker(Line line, MaterialBook book) {
        return book.material(line.materialKey())
                .filter(card -> Strengths.middle(card).isPresent())
                .map(Material::family)
                .filter(family -> family == Family.SURFACTANT || family == Family.ACID || family == Family.BASE)
                .isPresent();
    }
}
