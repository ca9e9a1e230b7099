package stillroom.desk.recipes;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stillroom.desk.batches.Cards;
import stillroom.desk.recipes.Recipe.Ingredient;
import stillroom.desk.recipes.Recipe.Instruction;
import stillroom.desk.recipes.Recipe.Part;
import stillroom.desk.shell.Format;
import stillroom.formulary.Problem;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.HandOut;
import stillroom.formulary.formula.HandOut.LineWords;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.formula.Step;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.BatchSize;
import stillroom.formulary.plan.Bench;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlanProblems;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.plan.Planner;
import stillroom.formulary.plan.Tolerances;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;
import stillroom.ledger.workshop.Workshop;

/** Writes a formula version as a recipe. The grams are those of the planner, rounded to the balance. */
record RecipeSheet(Workshop workshop, Product product, FormulaVersion version, MaterialBook book, HandOut words) {
    /** What others have on their bench: one balance of this step, of which nothing else is known. */
    static Balance balance(Grams step) {
        return new Balance("the balance", step, Optional.empty(), Grams.of("100000"));
    }

    /**
     * The plan behind the recipe.
     *
     * @param allowed by line id, the percentages that a law or a preservative's minimum leaves
     * @throws IllegalArgumentException where the formula cannot be planned at this size
     */
    Plan plan(Map<String, PercentRange> allowed, LocalDate today) {
        Bench bench = new Bench(List.of(balance(words.step())), List.of(), Tolerances.USUAL);
        return new Planner(book, bench, today).plan(version.formula(), new BatchSize.Stated(words.size()), allowed);
    }

    /** Why there is no recipe at this size and step; empty where there is one. */
    List<Problem> problems(Map<String, PercentRange> allowed, LocalDate today) {
        List<Problem> problems =
                new ArrayList<>(PlanProblems.of(version.formula(), new BatchSize.Stated(words.size())));
        if (problems.isEmpty()) {
            plan(allowed, today).lines().forEach(line -> refusal(line).ifPresent(problems::add));
        }
        return problems;
    }

    private Optional<Problem> refusal(PlannedLine line) {
        String name = new Cards(book).name(line.materialKey());
        if (line.target().signum() <= 0) {
            return Optional.of(new Problem("size", name + " would be rounded away: make more, or weigh finer."));
        }
        return line.advice().stream()
                .filter(PlannedLine.Advice::refuses)
                .map(advice ->
                        new Problem("size", name + ": " + advice.says() + " " + String.join(" Or: ", advice.choices())))
                .findFirst();
    }

    Recipe of(Plan plan, LocalDate printed) {
        return new Recipe(
                product.name(),
                "version " + version.number() + (version.kept() ? "" : ", draft"),
                workshop.name(),
                workshop.demonstration(),
                Format.grams(words.size()),
                words.step().toString(),
                Format.day(printed),
                equipment(),
                cautions(),
                parts(plan),
                Format.percent(Percent.HUNDRED, workshop.decimalsShown()),
                Format.grams(
                        Grams.sum(plan.lines().stream().map(PlannedLine::target).toList()), words.step()),
                band());
    }

    private List<Part> parts(Plan plan) {
        List<Part> parts = new ArrayList<>();
        int number = 1;
        for (Phase phase : version.formula().phases()) {
            List<Instruction> instructions = new ArrayList<>();
            for (Step step : phase.steps()) {
                instructions.add(instruction(number++, step));
            }
            List<Ingredient> ingredients = phase.lines().stream()
                    .flatMap(line -> plan.line(line.id()).map(planned -> ingredient(line, planned)).stream())
                    .toList();
            parts.add(new Part(phase.name(), ingredients, instructions));
        }
        return parts;
    }

    private Ingredient ingredient(Line line, PlannedLine planned) {
        Cards cards = new Cards(book);
        Optional<Material> card = cards.card(line.materialKey());
        LineWords said = words.words(line.id());
        return new Ingredient(
                line.id(),
                cards.name(line.materialKey()),
                cards.inci(line.materialKey()),
                card.flatMap(Material::strength).flatMap(Strengths::words).orElse(""),
                Format.percent(planned.asked(), workshop.decimalsShown()),
                Format.grams(planned.target(), words.step()),
                line.amount().match(fixed -> "", () -> "q.s. to 100", to -> "up to " + reading(to)),
                said.why(),
                said.instead(),
                card.map(this::bought).orElse(""),
                said.ownStrength()
                        ? card.flatMap(Strengths::middle)
                                .map(BigDecimal::toPlainString)
                                .orElse("")
                        : "");
    }

    private String bought(Material card) {
        List<String> told = new ArrayList<>();
        if (words.suppliers() && !card.supplier().isBlank()) {
            told.add("from " + card.supplier());
        }
        if (words.prices()) {
            card.price()
                    .map(price -> Format.decimal(price.of(Grams.of("1000")).value(), 2) + " " + workshop.currency()
                            + " per kg")
                    .ifPresent(told::add);
        }
        return String.join(", ", told);
    }

    private static String reading(Amount.ToReading to) {
        return to.reading() == ReadingKind.PH ? "pH" : Format.words(to.reading());
    }

    private static Instruction instruction(int number, Step step) {
        List<String> conditions = new ArrayList<>();
        step.celsius().ifPresent(celsius -> conditions.add(Format.figure(celsius, 0) + " °C"));
        if (!step.speed().isBlank()) {
            conditions.add(step.speed());
        }
        step.minutes().ifPresent(minutes -> conditions.add(Format.figure(minutes, 0) + " min"));
        return new Instruction(number, step.doing(), String.join(" · ", conditions), step.seeIt(), step.caution());
    }

    private List<String> equipment() {
        List<String> needed = new ArrayList<>();
        needed.add("a balance that shows " + words.step() + " g");
        int vessels = version.formula().phases().size();
        needed.add((vessels == 1 ? "a clean vessel" : vessels + " clean vessels") + ", spatulas, labels");
        if (steps().anyMatch(
                        step -> step.celsius().filter(celsius -> celsius > 30).isPresent())) {
            needed.add("a water bath and a thermometer");
        }
        if (product.brief().phBand().isPresent() || hasPhLine()) {
            needed.add("a calibrated pH meter, or strips");
        }
        needed.add("goggles, gloves, a clean apron");
        return needed;
    }

    private boolean hasPhLine() {
        return version.formula().lines().stream()
                .anyMatch(line -> line.amount() instanceof Amount.ToReading to && to.reading() == ReadingKind.PH);
    }

    private Stream<Step> steps() {
        return version.formula().phases().stream().flatMap(phase -> phase.steps().stream());
    }

    /** Each caution once, with the materials that it is about. */
    private List<String> cautions() {
        Map<String, Set<String>> about = new LinkedHashMap<>();
        for (Line line : version.formula().lines()) {
            book.material(line.materialKey())
                    .ifPresent(card -> card.cautions()
                            .forEach(caution -> about.computeIfAbsent(caution, c -> new LinkedHashSet<>())
                                    .add(card.name())));
        }
        return about.entrySet().stream()
                .map(entry -> String.join("; ", entry.getValue()) + ": " + entry.getKey())
                .toList();
    }

    private String band() {
        return product.brief()
                .phBand()
                .map(
                        band -> "pH " + Format.range(band, 1)
                                + ", read at room temperature, again the next day. Outside it:"
                                + " correct in small weighed steps, stir, wait five minutes, read again, and write down what was added.")
                .orElse("");
    }
}
