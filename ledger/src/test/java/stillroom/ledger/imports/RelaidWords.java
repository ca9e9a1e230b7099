package stillroom.ledger.imports;

import java.util.List;
import java.util.Random;

/** Words with which sheets are laid out anew: known ones in several languages, and ones that nobody knows. */
final class RelaidWords {
    static final List<String> NAME = List.of(
            "Ingredient",
            "INGREDIENTS",
            "Rohstoff",
            "Matière première",
            "Ingrediente",
            "Material",
            "Raw material",
            "name",
            "Zutat",
            "Ingrédient",
            "Materia prima",
            "what goes in",
            "RM name",
            "Trade name",
            "Inhaltsstoffe");
    static final List<String> PERCENT =
            List.of("%", "% w/w", "Percent", "wt %", "Anteil %", "Gew.-%", "% (m/m)", "pct", "Menge [%]");
    static final List<String> GRAMS =
            List.of("g", "Grams", "weight (g)", "Menge g", "Poids (g)", "Gramm", "Amount [g]", "peso g");
    static final List<String> AMOUNT =
            List.of("Amount", "Menge", "Quantité", "Quantity", "Cantidad", "Dosage", "how much");
    static final List<String> PHASE = List.of("Phase", "PHASE", "Fase", "Ph.", "Part", "Stage", "Teil");
    static final List<String> INCI = List.of("INCI", "INCI name", "INCI-Bezeichnung", "Nom INCI", "inci");
    static final List<String> FUNCTION = List.of("Function", "Funktion", "what for", "Fonction", "Role");
    static final List<String> FUNCTIONS = List.of(
            "solvent", "emollient", "emulsifier", "humectant", "preservative", "thickener", "care", "Wirkstoff");
    static final List<String> NOTES = List.of(
            "new bag",
            "sieve first",
            "see p. 12",
            "warm gently",
            "from the blue tub",
            "smells nice",
            "organic",
            "max 2 %!",
            "check stock");
    static final List<String> BETWEEN = List.of(
            "Heat to 75 °C and stir well",
            "Homogenise for 3 min.",
            "Stir until clear.",
            "Unter 40 °C zugeben",
            "mix well before going on",
            "Both phases must have the same temperature.",
            "slowly, no lumps");
    static final List<String> FACTS = List.of(
            "Batch size: 500 g",
            "Date: 12.03.2024",
            "Version 3",
            "pH 5.5 - 6.0",
            "made by K.",
            "Target pH: 5.2",
            "for dry skin",
            "Rev. 2");
    static final List<String> TITLES = List.of(
            "Lotion No. 7",
            "Body milk 2024",
            "Test 14b",
            "Creme 3",
            "Hand cream for winter",
            "Shampoo mild v2",
            "Trial 12 without perfume",
            "Fluid 50+",
            "Sommerlotion");
    static final List<String> STEPS = List.of(
            "1. Heat phase A to 75 °C.",
            "2. Add B slowly, stir 5 min",
            "3. Cool to 40 °C and add the rest.",
            "4. Check pH 5.5, fill.");
    static final List<String> TOTAL =
            List.of("Total", "TOTAL", "Summe", "Sum:", "Gesamt", "Somme", "Totale", "Total %");
    static final List<String> REST =
            List.of("q.s. to 100", "ad 100", "qsp 100", "to 100", "q.s. 100", "ad 100 %", "balance", "rest");
    static final List<String> NAMED_PHASES = List.of(
            "Water phase",
            "Oil phase",
            "Cool-down phase",
            "Wasserphase",
            "Fettphase",
            "Wirkstoffphase",
            "Fase acquosa",
            "Phase aqueuse",
            "Aqueous",
            "Oils",
            "Cool down",
            "Heated water");
    static final List<String> ODD_PHASES =
            List.of("Kettle one", "Big pot", "Small beaker", "Topf links", "Becher 2", "afterwards", "Start", "Last");

    private RelaidWords() {}

    static String one(List<String> words, Random random) {
        return words.get(random.nextInt(words.size()));
    }

    /** A word that no language has. */
    static String unknown(Random random) {
        String consonants = "bdfgklmnprstvz";
        String vowels = "aeiou";
        StringBuilder word = new StringBuilder();
        for (int i = 0; i < 2 + random.nextInt(2); i++) {
            word.append(consonants.charAt(random.nextInt(consonants.length())))
                    .append(vowels.charAt(random.nextInt(vowels.length())));
        }
        word.append(consonants.charAt(random.nextInt(consonants.length())));
        return word.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + word.substring(1);
    }
}
