package stillroom.desk.recipes;

import java.util.List;

/**
 * A recipe for somebody who does not have the program: all in words and figures, ready to be set.
 *
 * @param forGrams batch size as printed, such as "500"
 * @param forStep step of the balance for which it is written, such as "0.1" [g]
 * @param equipment what to have ready
 * @param cautions for the person, each once
 * @param band what the reading should be and what to do otherwise; empty where there is no band
 */
public record Recipe(
        String product,
        String version,
        String workshop,
        boolean demonstration,
        String forGrams,
        String forStep,
        String printed,
        List<String> equipment,
        List<String> cautions,
        List<Part> parts,
        String totalPercent,
        String totalGrams,
        String band) {
    /** One phase: what goes in, then what to do. */
    public record Part(String name, List<Ingredient> ingredients, List<Instruction> instructions) {}

    /**
     * One line.
     *
     * @param id of the formula's line
     * @param strength such as "29 to 32 % active", empty where none is stated
     * @param how "up to the reading" for lines that are added until it is right, else empty
     * @param why what it is there for, may be empty
     * @param instead substitutions that the author allows
     * @param bought supplier and price where the author gives them, else empty
     * @param asks strength for which the recipe is written, where the reader is asked for their own; else empty [%]
     */
    public record Ingredient(
            String id,
            String name,
            String inci,
            String strength,
            String percent,
            String grams,
            String how,
            String why,
            List<String> instead,
            String bought,
            String asks) {}

    /** One step. */
    public record Instruction(int number, String doing, String conditions, String seeIt, String caution) {}
}
