package stillroom.formulary.imports;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words that announce a phase, parted into its name and what is to be done with it: "Phase A (heat to 75 °C)".
 *
 * @param name as it stands there, without what is to be done
 * @param instruction temperature or work, empty where none is said
 */
record PhaseName(String name, String instruction) {
    private static final Pattern BRACKETED = Pattern.compile("(\\S.*?)\\s*[:,–—-]?\\s*\\(([^()]+)\\)[\\s:.]*");
    private static final Pattern PARTED = Pattern.compile("(\\S.*?)\\s*(?::|\\s[–—-]|,)\\s*(\\S.+?)[\\s:.]*");
    private static final Pattern TEMPERATURE =
            Pattern.compile(".*\\d{2,3}\\s*([°º]|deg|grad|[cfCF]\\b).*|[<>≤≥~]\\s*\\d{2,3}");
    private static final Pattern WORK = Pattern.compile(
            "((to be |then |slowly )?(heat|warm|melt|cool|below|above|under|stir|mix|whisk|add|blend|dissolve|disperse|hydrate|homogeni[sz]e|at room|room temp|unter|uber|ab|bei|auf|kalt einruhren|sous|au[- ]dessous|chauff|fondre|refroid|ajouter|bajo|por debajo|calentar|fundir|enfriar|sotto|scalda|sciogli|raffredda|onder|boven|verwarm|smelt)\\b.*\\d.*"
                    + "|(heat|melt|warm|cool|stir|mix|blend|dissolve|disperse) .+|(heat|melt|warm|cool|stir|mix|cold|cool)(ed)?( down)?)");

    static PhaseName of(String text) {
        String whole = text.strip();
        for (Pattern form : java.util.List.of(BRACKETED, PARTED)) {
            Matcher parts = form.matcher(whole);
            if (parts.matches() && isInstruction(parts.group(2), whole)) {
                return new PhaseName(parts.group(1), parts.group(2));
            }
        }
        return new PhaseName(whole, "");
    }

    /** A single word such as "cool" tells only behind the letter or number of a phase. */
    private static boolean isInstruction(String said, String whole) {
        String folded = Folding.of(said).strip();
        boolean one = folded.matches("\\p{L}+( down)?");
        return TEMPERATURE.matcher(said).matches()
                || Talk.is(said)
                || WORK.matcher(folded).matches() && (!one || RowWords.isPhaseNumbered(whole));
    }

    /** How the phase is named in the formula: "A" becomes "Phase A". */
    String shown() {
        String whole = name.replaceAll("[\\s:.\\-–]+$", "");
        String plain = whole.contains("(") && !whole.startsWith("(") ? whole : whole.replaceAll("[)\\s]+$|^\\(", "");
        if (RowWords.isPhaseLetter(plain)) {
            return "Phase " + plain.toUpperCase(Locale.ROOT);
        }
        return plain.isEmpty() ? "" : plain.substring(0, 1).toUpperCase(Locale.ROOT) + plain.substring(1);
    }
}
