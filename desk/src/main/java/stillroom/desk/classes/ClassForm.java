package stillroom.desk.classes;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.recipes.HandOutPage;
import stillroom.desk.shell.Input;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Line;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.plan.ClassOf;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;

/** The form with which a class is set up. */
final class ClassForm {
    static final int MOST_SETS = 40;

    private ClassForm() {}

    /** What stands in the form at first: ten sets, and each preservative as a premix in the line that fills up. */
    static Map<String, String> usual(FormulaVersion version, MaterialBook book, LocalDate today) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("title", "Class");
        fields.put("day", today.toString());
        fields.put("sets", "10");
        fields.put("each", "100");
        fields.put("step", "0.1");
        fields.put("spare", "10");
        carriers(version).stream().findFirst().ifPresent(carrier -> {
            for (Line line : version.formula().lines()) {
                if (isPreservative(line, book)) {
                    fields.put("premix-" + line.id(), carrier.id());
                }
            }
        });
        return fields;
    }

    private static boolean isPreservative(Line line, MaterialBook book) {
        return line.amount() instanceof Amount.Fixed
                && book.material(line.materialKey())
                        .map(Material::family)
                        .filter(family -> family == Family.PRESERVATIVE)
                        .isPresent();
    }

    /** Lines that may carry a premix: the one that fills up first. */
    static List<Line> carriers(FormulaVersion version) {
        return version.formula().lines().stream()
                .filter(line -> !(line.amount() instanceof Amount.ToReading))
                .sorted((a, b) ->
                        Boolean.compare(b.amount() instanceof Amount.ToHundred, a.amount() instanceof Amount.ToHundred))
                .toList();
    }

    static Optional<ClassOf> read(Input input, FormulaVersion version) {
        String title = input.required("title", "The name of the class");
        Optional<LocalDate> day = input.day("day", "The day");
        Optional<Integer> sets = input.whole("sets", "The number of sets", 1, MOST_SETS);
        Optional<BigDecimal> each = input.decimal("each", "The size of a set", "1", "100000");
        Optional<Percent> spare = input.percent("spare", "The spare");
        if (!HandOutPage.STEPS.contains(input.text("step"))) {
            input.refuse("step", "Choose the step of the balances.");
        }
        if (sets.isEmpty() && !input.hasProblem("sets")) {
            input.refuse("sets", "The number of sets is missing.");
        }
        if (each.isEmpty() && !input.hasProblem("each")) {
            input.refuse("each", "The size of a set is missing.");
        }
        Map<String, String> premixes = premixes(input, version);
        return input.isSound()
                ? Optional.of(new ClassOf(
                        title,
                        day.orElse(LocalDate.EPOCH),
                        version.productId(),
                        version.number(),
                        sets.orElseThrow(),
                        new Grams(each.orElseThrow()),
                        Grams.of(input.text("step")),
                        spare.orElse(Percent.ZERO),
                        premixes,
                        List.of()))
                : Optional.empty();
    }

    private static Map<String, String> premixes(Input input, FormulaVersion version) {
        Map<String, String> premixes = new LinkedHashMap<>();
        List<String> carriers = carriers(version).stream().map(Line::id).toList();
        for (Line line : version.formula().lines()) {
            String carrier = input.text("premix-" + line.id());
            if (carriers.contains(carrier) && !carrier.equals(line.id())) {
                premixes.put(line.id(), carrier);
            }
        }
        return premixes;
    }
}
