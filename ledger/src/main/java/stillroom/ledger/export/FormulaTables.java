package stillroom.ledger.export;

import java.io.IOException;
import java.util.List;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Product;
import stillroom.ledger.formula.ProductShelf;

/** All versions of all formulas, a line of a formula or a step of its procedure a row. */
record FormulaTables(Csv csv, ProductShelf shelf, CardNames names) {
    void write() throws IOException {
        List<Product> products = shelf.products();
        formulas(products);
        steps(products);
    }

    private void formulas(List<Product> products) throws IOException {
        csv.table(
                "formulas",
                List.of("product", "version", "kept", "phase", "material", "material_key", "percent", "qs", "note"),
                table -> {
                    for (Product product : products) {
                        for (FormulaVersion version : shelf.versions(product.id())) {
                            for (Phase phase : version.formula().phases()) {
                                for (Line line : phase.lines()) {
                                    table.writeRecord(formulaRow(product, version, phase, line));
                                }
                            }
                        }
                    }
                });
    }

    private List<String> formulaRow(Product product, FormulaVersion version, Phase phase, Line line) {
        return List.of(
                Csv.safe(product.name()),
                Integer.toString(version.number()),
                version.kept() ? "yes" : "no",
                Csv.safe(phase.name()),
                Csv.safe(names.of(line.materialKey())),
                line.materialKey(),
                line.amount()
                        .match(
                                fixed -> fixed.percent().toString(),
                                () -> "",
                                to -> to.expected().toString()),
                line.amount().match(fixed -> "", () -> "100", to -> Csv.word(to.reading())),
                Csv.safe(line.note()));
    }

    private void steps(List<Product> products) throws IOException {
        csv.table(
                "steps",
                List.of("product", "version", "phase", "doing", "celsius", "speed", "minutes", "look_for", "caution"),
                table -> {
                    for (Product product : products) {
                        for (FormulaVersion version : shelf.versions(product.id())) {
                            for (Phase phase : version.formula().phases()) {
                                phase.steps()
                                        .forEach(step -> table.writeRecord(List.of(
                                                Csv.safe(product.name()),
                                                Integer.toString(version.number()),
                                                Csv.safe(phase.name()),
                                                Csv.safe(step.doing()),
                                                Csv.plain(step.celsius()),
                                                Csv.safe(step.speed()),
                                                Csv.plain(step.minutes()),
                                                Csv.safe(step.seeIt()),
                                                Csv.safe(step.caution()))));
                            }
                        }
                    }
                });
    }
}
