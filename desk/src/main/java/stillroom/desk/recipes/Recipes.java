package stillroom.desk.recipes;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.sheets.Sheets;
import stillroom.desk.shell.Pages;
import stillroom.formulary.Problem;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.HandOut;
import stillroom.formulary.formula.Product;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.PercentRange;
import stillroom.ledger.workshop.Workshop;

/**
 * The recipe of a formula that stands in no workshop.
 *
 * @param allowed by line id, the percentages that a law or a preservative's minimum leaves
 */
public record Recipes(
        String name,
        Brief brief,
        Formula formula,
        MaterialBook book,
        Map<String, PercentRange> allowed,
        LocalDate today) {
    public Recipes {
        allowed = Map.copyOf(allowed);
    }

    /** Why there is none at this size and step; empty where there is one. */
    public List<Problem> problems(Grams size, BigDecimal step) {
        return sheet(size, step).problems(allowed, today);
    }

    /** One file for any browser. */
    public String html(Grams size, BigDecimal step) {
        RecipeSheet sheet = sheet(size, step);
        return RecipeFile.of(new Pages(), sheet.of(sheet.plan(allowed, today), today), sheet, allowed);
    }

    /** One page where that goes. */
    public byte[] pdf(Grams size, BigDecimal step) {
        RecipeSheet sheet = sheet(size, step);
        return Sheets.onOnePage(new Pages(), "recipes/recipe.jte", sheet.of(sheet.plan(allowed, today), today));
    }

    /** The bare recipe, without reasons and substitutions, to be set among other things. */
    public Recipe recipe(Grams size, BigDecimal step) {
        RecipeSheet sheet = sheet(new HandOut(size, new Grams(step), Map.of(), false, false));
        return sheet.of(sheet.plan(allowed, today), today);
    }

    private RecipeSheet sheet(Grams size, BigDecimal step) {
        HandOut usual = UsualWords.of(formula, book);
        return sheet(new HandOut(size, new Grams(step), usual.lines(), false, false));
    }

    private RecipeSheet sheet(HandOut words) {
        FormulaVersion version =
                new FormulaVersion(0, 1, 1, true, Optional.empty(), "", Instant.EPOCH, formula, Map.of());
        return new RecipeSheet(Workshop.UNNAMED, new Product(0, name, brief, ""), version, book, words);
    }
}
