package stillroom.desk.cli.formula;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.judgement.law.LineLimits;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.BatchSize;
import stillroom.formulary.plan.Bench;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlanProblems;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.plan.PlannedLine.Advice;
import stillroom.formulary.plan.Planner;
import stillroom.formulary.plan.Tolerances;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.PercentRange;
import stillroom.formulary.rule.RuleBook;
import stillroom.ledger.exchange.FileProblem;
import stillroom.ledger.exchange.ReadyFormula;

/** {@code ./stillroom plan FILE --batch 500 --step 0.1}: grams for one batch of formula files; docs/commands.md. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Turns formula files into grams for one batch, rounded to a balance, adding up exactly.")
public final class PlanCommand implements Callable<Integer> {
    private static final BigDecimal USUAL_STEPS = BigDecimal.valueOf(1_000_000);

    @Mixin
    private FormulaOptions options = new FormulaOptions();

    @Option(names = "--batch", required = true, paramLabel = "GRAMS", description = "Mass of the batch [g].")
    private String batch = "";

    @Option(names = "--step", paramLabel = "GRAMS", description = "What the balance shows [g]. Usually 0.1.")
    private String step = "0.1";

    @Option(names = "--max", paramLabel = "GRAMS", description = "Largest load of the balance [g].")
    private @Nullable String largest;

    @Override
    public Integer call() {
        BatchSize size = new BatchSize.Stated(options.grams("--batch", batch));
        Bench bench = new Bench(List.of(balance()), List.of(), Tolerances.USUAL);
        RuleBook rules = options.rules();
        options.check(rules);
        try (Library library = options.library(rules)) {
            return new FormulaInput(options, library.catalogue())
                    .each((ready, remarks) -> answer(ready, remarks, size, bench, rules));
        }
    }

    private Balance balance() {
        Grams shown = options.grams("--step", step);
        Grams most = largest == null ? new Grams(shown.value().multiply(USUAL_STEPS)) : options.grams("--max", largest);
        if (most.compareTo(shown) <= 0) {
            throw slip("--max must be above --step");
        }
        return new Balance("balance", shown, Optional.empty(), most);
    }

    private ParameterException slip(String sentence) {
        return new ParameterException(options.spec().commandLine(), sentence);
    }

    private Answer answer(ReadyFormula ready, List<FileProblem> remarks, BatchSize size, Bench bench, RuleBook rules) {
        List<FileProblem> problems = PlanProblems.of(ready.formula(), size).stream()
                .map(problem -> new FileProblem(0, problem.field(), problem.sentence()))
                .toList();
        if (!problems.isEmpty()) {
            return FormulaInput.unreadable(ready.file().name() + ": the plan", problems);
        }
        Map<String, PercentRange> allowed =
                LineLimits.of(ready.subject(options.asked(ready.file().brief())), ready.book(), rules, options.asOf());
        Plan plan = new Planner(ready.book(), bench, options.asOf()).plan(ready.formula(), size, allowed);
        return new Answer(
                plan.refused() ? Status.WARNED : Status.CLEAN,
                () -> json(ready, plan, bench, remarks),
                () -> text(ready, plan));
    }

    private static ObjectNode json(ReadyFormula ready, Plan plan, Bench bench, List<FileProblem> remarks) {
        ObjectNode said = JsonNodeFactory.instance.objectNode();
        said.put("name", ready.file().name());
        said.put("batchGrams", plan.batch().value());
        said.put("stepGrams", bench.balances().get(0).step().value());
        said.put("reckoning", plan.reckoning());
        plan.residue().ifPresent(line -> said.put("residueLine", line));
        said.put("refused", plan.refused());
        ArrayNode lines = said.putArray("lines");
        int number = 0;
        for (PlannedLine line : plan.lines()) {
            ObjectNode one = lines.addObject();
            one.put("id", line.lineId());
            one.put("number", ++number);
            one.put("phase", phase(ready, line));
            one.put("material", line.materialKey());
            one.put("name", ready.names().getOrDefault(line.lineId(), line.materialKey()));
            one.put("percent", line.asked().value());
            one.put("grams", line.target().value());
            one.put("toleranceGrams", line.tolerance().value());
            one.put("toReading", line.toReading());
            ArrayNode advice = one.putArray("advice");
            shelfless(line).forEach(each -> write(each, advice.addObject()));
        }
        said.set("remarks", FormulaInput.list(remarks));
        return said;
    }

    private static void write(Advice advice, ObjectNode into) {
        into.put("says", advice.says());
        ArrayNode choices = into.putArray("choices");
        advice.choices().forEach(choices::add);
        into.put("refuses", advice.refuses());
    }

    private static String phase(ReadyFormula ready, PlannedLine line) {
        return ready.formula().phase(line.phaseId()).map(Phase::name).orElse(line.phaseId());
    }

    /** Advice but that on lots: a file has no shelf. */
    private static List<Advice> shelfless(PlannedLine line) {
        return line.advice().stream()
                .filter(advice -> !advice.says().contains("booked"))
                .toList();
    }

    private static String text(ReadyFormula ready, Plan plan) {
        StringBuilder text =
                new StringBuilder(Plain.paragraph("", 0, ready.file().name() + ", " + plan.batch() + " g"));
        String phase = "";
        for (PlannedLine line : plan.lines()) {
            String of = phase(ready, line);
            if (!of.equals(phase)) {
                text.append('\n').append(Plain.paragraph("", 0, "Phase " + of));
                phase = of;
            }
            String name = Plain.cut(ready.names().getOrDefault(line.lineId(), line.materialKey()), 44);
            text.append(String.format(
                    java.util.Locale.ROOT,
                    "  %-44s %10s %% %12s g%s%n",
                    name,
                    Plain.cut(line.asked().toString(), 10),
                    line.target(),
                    line.toReading() ? " *" : ""));
            shelfless(line)
                    .forEach(advice -> text.append(
                            Plain.paragraph("    ", 6, advice.says() + " " + String.join(" ", advice.choices()))));
        }
        if (plan.lines().stream().anyMatch(PlannedLine::toReading)) {
            text.append("\n* expected; added at the end up to the reading\n");
        }
        return text.toString();
    }
}
