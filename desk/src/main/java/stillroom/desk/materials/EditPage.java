package stillroom.desk.materials;

import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/**
 * The form of a card.
 *
 * @param path where the form goes
 * @param key of the card, empty for a new one
 * @param rows how many constituents the form holds
 * @param unknown for each row whether its name is not in the substance table
 * @param conflict one sentence where somebody saved in the meantime, else empty
 * @param inciNames to choose from
 * @param productTypes how they are written in a certificate
 * @param cardNames cards that may stand in this one, as they are written in the form
 */
public record EditPage(
        Frame frame,
        String path,
        String key,
        Typed typed,
        int rows,
        List<Boolean> unknown,
        String conflict,
        Impact impact,
        List<String> inciNames,
        List<String> cardNames,
        List<String> usualSources,
        String currency,
        Choices choices,
        String productTypes) {
    /** The lists to choose from. */
    public record Choices(List<Choice> families, List<Choice> bases, List<Choice> roles, List<Choice> charges) {}

    public boolean isNew() {
        return key.isEmpty();
    }

    /** Name of a field in a row of the composition. */
    public String field(int row, String part) {
        return ConstituentRows.field(row, part);
    }
}
