package stillroom.desk.cli.formula;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import stillroom.desk.recipes.Recipes;
import stillroom.formulary.judgement.claim.ClaimsGate;
import stillroom.formulary.judgement.law.LineLimits;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.rule.RuleBook;
import stillroom.ledger.exchange.FileProblem;
import stillroom.ledger.exchange.ReadyFormula;
import stillroom.ledger.store.LedgerException;

/** {@code ./stillroom recipe FILE --batch 500 --out recipe.html}: a recipe for others from a formula file; docs/commands.md. */
@Command(
        name = "recipe",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Writes the recipe of a formula file: one HTML file that reckons by itself, or one page as PDF.")
public final class RecipeCommand implements Callable<Integer> {
    @Mixin
    private FormulaOptions options = new FormulaOptions();

    @Option(names = "--batch", paramLabel = "GRAMS", description = "Mass of the batch [g]. Usually 500.")
    private String batch = "500";

    @Option(names = "--step", paramLabel = "GRAMS", description = "What the balance shows [g]. Usually 0.1.")
    private String step = "0.1";

    @Option(
            names = "--out",
            required = true,
            paramLabel = "OUT",
            description = "The recipe: a new file that ends in .html or .pdf; - writes HTML to standard output.")
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private Path out;

    @Override
    public Integer call() {
        Grams size = options.grams("--batch", batch);
        Grams shown = options.grams("--step", step);
        if (options.files().size() != 1 || !(isPage() || out.toString().endsWith(".pdf"))) {
            throw new ParameterException(
                    options.spec().commandLine(),
                    "Give one formula file, and for --out a file that ends in .html or .pdf");
        }
        if (isStream() && options.json()) {
            throw new ParameterException(
                    options.spec().commandLine(),
                    "Standard output holds either the recipe or JSON; name a file for --out");
        }
        RuleBook rules = options.rules();
        options.check(rules);
        try (Library library = options.library(rules)) {
            return new FormulaInput(options, library.catalogue())
                    .each((ready, remarks) -> answer(ready, size, shown, rules));
        }
    }

    private boolean isPage() {
        return isStream() || out.toString().endsWith(".html");
    }

    private boolean isStream() {
        return out.toString().equals("-");
    }

    private Answer answer(ReadyFormula ready, Grams size, Grams shown, RuleBook rules) {
        String name = ready.file().name();
        if (new ClaimsGate(rules).judge(ready.file().brief()).blocksPublicRecipe()) {
            return refused(name, "No recipe is handed out: what the product claims falls under another law.");
        }
        Recipes recipes = new Recipes(
                name,
                ready.file().brief(),
                ready.formula(),
                ready.book(),
                LineLimits.of(ready.subject(options.asked(ready.file().brief())), ready.book(), rules, options.asOf()),
                options.asOf());
        return recipes.problems(size, shown.value()).stream()
                .findFirst()
                .map(problem -> refused(name, problem.sentence()))
                .orElseGet(() -> written(recipes, size, shown));
    }

    private Answer written(Recipes recipes, Grams size, Grams shown) {
        byte[] recipe = isPage()
                ? recipes.html(size, shown.value()).getBytes(StandardCharsets.UTF_8)
                : recipes.pdf(size, shown.value());
        if (isStream()) {
            System.out.writeBytes(recipe);
            System.out.flush();
            return new Answer(Status.CLEAN, JsonNodeFactory.instance::objectNode, () -> "");
        }
        try {
            Files.write(out, recipe, StandardOpenOption.CREATE_NEW);
        } catch (FileAlreadyExistsException there) {
            throw new LedgerException("The file " + out + " exists already; a recipe overwrites nothing.", there);
        } catch (IOException stuck) {
            throw new UncheckedIOException(stuck);
        }
        ObjectNode said = JsonNodeFactory.instance.objectNode();
        said.put("written", out.toString());
        said.put("bytes", recipe.length);
        return new Answer(Status.CLEAN, () -> said, () -> "The recipe is " + out + "\n");
    }

    private static Answer refused(String name, String sentence) {
        return FormulaInput.unreadable(name + ": the recipe", List.of(new FileProblem(0, "", sentence)));
    }
}
