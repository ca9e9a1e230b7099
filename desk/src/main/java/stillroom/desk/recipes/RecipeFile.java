package stillroom.desk.recipes;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Assets;
import stillroom.desk.shell.Pages;
import stillroom.formulary.formula.HandOut;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.material.Material;
import stillroom.formulary.plan.Tolerances;
import stillroom.formulary.quantity.PercentRange;

/**
 * A recipe as one HTML file that needs neither the program nor a network. At the author's size it is whole without scripts; with
 * them it rescales itself by the planner's rules, from the figures that stand in it as data.
 */
final class RecipeFile {
    private static final String STYLE = text("recipes/file.css");
    private static final String SCRIPT = text("recipes/file.js");

    private RecipeFile() {}

    private static String text(String asset) {
        return new String(Assets.read(asset).orElseThrow(), StandardCharsets.UTF_8);
    }

    static String of(Pages pages, Recipe recipe, RecipeSheet sheet, Map<String, PercentRange> allowed) {
        return pages.render(
                "recipes/file.jte",
                Map.of("page", recipe, "css", STYLE, "script", SCRIPT, "data", inScript(data(sheet, allowed))));
    }

    /** JSON that nothing typed can break out of: every angle bracket and ampersand is written as an escape. */
    private static String inScript(ObjectNode data) {
        return data.toString().replace("<", "\\u003c").replace(">", "\\u003e").replace("&", "\\u0026");
    }

    private static ObjectNode data(RecipeSheet sheet, Map<String, PercentRange> allowed) {
        HandOut words = sheet.words();
        ObjectNode data = JsonNodeFactory.instance.objectNode();
        data.put("size", words.size().toString());
        data.put("step", words.step().toString());
        data.put("decimals", sheet.workshop().decimalsShown());
        ArrayNode lines = data.putArray("lines");
        for (Phase phase : sheet.version().formula().phases()) {
            for (Line line : phase.lines()) {
                ObjectNode one = lines.addObject();
                one.put("id", line.id());
                one.put("phase", phase.id());
                describe(one, line, sheet.book().material(line.materialKey()), words);
                Optional.ofNullable(allowed.get(line.id())).ifPresent(range -> {
                    one.put("least", range.low().toString());
                    one.put("most", range.high().toString());
                });
            }
        }
        return data;
    }

    private static void describe(ObjectNode one, Line line, Optional<Material> card, HandOut words) {
        one.put("name", card.map(Material::name).orElse(line.materialKey()));
        boolean toHundred = line.amount().match(fixed -> false, () -> true, to -> false);
        one.put("kind", line.amount().match(fixed -> "fixed", () -> "rest", to -> "reading"));
        one.put(
                "percent",
                line.amount()
                        .match(
                                fixed -> fixed.percent().toString(),
                                () -> "0",
                                to -> to.expected().toString()));
        one.put(
                "tolerance",
                Tolerances.USUAL.of(line.materialKey(), toHundred, card).toString());
        if (words.words(line.id()).ownStrength()) {
            card.flatMap(Strengths::middle).ifPresent(middle -> one.put("written", middle.toPlainString()));
        }
    }
}
