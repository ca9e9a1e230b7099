package stillroom.desk.imports;

import java.util.ArrayList;
import java.util.List;

/** What keeps a sheet from being stored as it is decided now. */
final class Obstacles {
    private Obstacles() {}

    static List<String> of(HeldSheet sheet, CardNames cards) {
        List<String> problems = new ArrayList<>();
        List<SettledFormula> formulas = SettledFormula.all(sheet, cards).stream()
                .filter(SettledFormula::take)
                .toList();
        List<SettledMaterial> materials = SettledMaterial.all(sheet, cards).stream()
                .filter(SettledMaterial::take)
                .toList();
        formulas.forEach(formula -> problems.addAll(formula.obstacles()));
        materials.forEach(material -> problems.addAll(material.obstacles()));
        if (formulas.isEmpty() && materials.isEmpty()) {
            problems.add("Nothing of this sheet is taken; tick what is to be stored.");
        }
        return problems;
    }
}
