package stillroom.formulary.imports;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the first words of a row say about it. */
final class RowWords {
    private static final Pattern TOTAL = Pattern.compile(
            "((whole|entire|total|complete|full) (batch|amount|weight|mass|quantity)(?![\\p{L}]).*)|(grand[ -]|in |sub-?\\s?|zwischen|sous-?\\s?|overall |check ?sum ?|control ?)?(totals?|totales?|totalt|alto?gether|all together|ensemble|yhteensa|lacznie|ukupno|osszesen|toplam|totale|totaal|sum|sums|summe|gesamt(menge|summe|gewicht|ergebnis)?|somme|suma|soma|insgesamt|zusammen|razem|celkem|tot\\.|σ|∑)"
                    + "(?![\\p{L}]).*|100\\s*%|zwischensumme.*|gesamt:?|[\\p{L}][\\p{L} ]{2,24} (sub-?)?(totals?|sum|summe|gesamt|totaal|totale)|(check|kontrolle|controle)( ?\\(?100 ?%?\\)?)?:?");
    private static final Pattern OF_A_PHASE = Pattern.compile(".*(phase|fase|sub|zwischen|sous|part [a-z]).*");
    private static final Pattern PHASE_NUMBERED =
            Pattern.compile("(phase|fase|faza)\\s*[:\\-.#]?\\s*([a-z]|\\d{1,2}|[ivx]{1,4})\\d?\\b.*");
    private static final Pattern PHASE_SURE = Pattern.compile(
            "((phase|fase|faza)\\s*[:\\-.#]?\\s*|(teil|part|partie|stage)[\\s:\\-.#]+)([a-z]|\\d{1,2}|[ivx]{1,4})\\d?\\b.*"
                    + "|[\\p{L}\\- /()]{0,30}(phase|fase)(?!\\p{L})[^.]{0,30}|([a-z]|\\d)[\\d.):\\-]*\\s*[-:.)]?\\s*[\\p{L}\\- ]{0,25}(phase|fase)\\b.{0,30}");
    private static final Pattern PHASE_LETTER = Pattern.compile("\\(?([a-h]\\d?|i{1,3}|iv|v)\\)?[.):]?");
    private static final Pattern PHASE_LIKE = Pattern.compile(
            "(cool[- ]?down|after cool\\w*|extras|additives|clays?|salts|dry|wet|liquids?|solids?|waxes|lye( water)?|hydrosols?|essential oils|scents?|botanicals|at trace|at the end|to finish|zusatze|wachse|fette|lauge|cires|huiles|beurres|ajouts|cold|heated|hot|water|oil|fat|wax|aqueous|lipid|surfactants?|actives?|powders?|emulsifiers?|oils|fats|butters?|wasser|fett|ol|wirkstoffe|tenside|pigments?|fragrance|preserv\\w*|heat|abkuhl\\w*|kalt|warm|refroidi\\w*|others?)"
                    + "( (phase|part|stage|ingredients?|additions?|below \\d+.*|at \\d+.*))?:?");
    private static final Pattern METHOD = Pattern.compile(
            "(procedure|method|directions|instructions?|manufactur\\w*|making|preparation|process|steps?|how to( make)?|herstell\\w*|verfahren|arbeitsweise|arbeitsanweisung|zubereitung|anleitung|durchfuhrung|mode op\\w*|procede|protocole|fabricacion|elaboracion|procedimiento|metodo|procedimento|preparazione|bereiding|werkwijze)( .{0,20})?[:.]?");
    private static final Pattern FACT = Pattern.compile(
            "(quantite a fabriquer|quantita da preparare|cantidad a fabricar|batch|lot|lote|lotto|partita|vessel|kessel|cuve|batch ?size|batch ?weight|batch \\(.*\\)|total batch|for|makes|ansatz\\w*|chargengr\\w*|lot size|taille.*|size|yield|date|datum|fecha|data|version.*|rev\\w*\\.?|ph|ph[ -].*|final ph.*|target ph.*|viscosity.*|viskosit.*|density.*|dichte.*|page|seite|temp\\w*.*|total cost.*|cost.*|kosten.*|price.*|preis.*|fill\\w*.*|units?|pieces|stuck.*|loss.*|hlb.*|rpm.*|speed.*|mixing.*|shelf life.*|storage.*|menge gesamt|number of.*|anzahl.*|author|autor|by|prepared.*|erstellt.*|made by.*|customer|kunde|project|projekt|code|ref\\w*|type|typ|status|product.*|produkt.*|formula|formula (no|nr|name|code|id|number).*|formel|rezept\\w*|recept|recette|receta|ricetta|receita|recipe.*|name|title|titel|nom|produit.*|producto.*|notes?|hinweis\\w*|bemerkung\\w*|appearance|colou?r|odou?r|skin type.*|batch (no|nr|number|code).*|charge.*|lot (no|nr).*|stand|stand ?:.*|(rezept\\w*|formula|formule|ricetta|recette|receta|recept) ?(nr|no|n°|nº|#)?[.]? ?[\\d./-]+|cantidad total.*|quantita totale.*|quantidade total.*|(evaporation|water loss|verdunstung|verlust|perte|rendement|resa|merma).*|(rezept\\w*|formel|formula|recipe|artikel|doc\\w*|dok\\w*)[ -]?(nr|no|nummer|number|id))[.]?\\s?[:=]?");
    private static final Pattern TITLED = Pattern.compile(
            "(?iu)(?:calculation|kalkulation|calcul|calcolo|nom de la recette|nombre del producto|nome do produto|nome del prodotto|product|product name|f[oó]rmula|ficha|artikel|bezeichnung|produkt|produktname|formula|formula name|formel|rezept|rezeptur|recept|recette|receta|ricetta|receita|recipe|recipe name|name|title|titel|nom|nom du produit|produit|producto|prodotto|formule|formula title)(?:\\s*(?:n[r°oº.]*|no\\.|#)?\\s*[\\d./-]+)?\\s*[:=]\\s*(.*)");
    private static final int LONGEST_FACT = 48;
    private static final Pattern LIST = Pattern.compile(
            "(ingredients?|zutaten|you need|you will need|du brauchst|ingredientes|ingredienti|what you need|materials?|rohstoffe)\\b[^:]{0,40}:|ingredients?|zutaten");
    private static final Pattern MAKES = Pattern.compile(".*\\b(makes|ergibt|for|fur|pour|para|per)\\s+(?<said>\\d.*)");
    private static final Pattern MAKES_SO_MUCH =
            Pattern.compile("(?i).*\\((makes|yields|ergibt|for|für|pour|para|per)\\s+\\d[^)]*\\).*");
    private static final Pattern BATCH = Pattern.compile(
            "(total )?(quantite a fabriquer|quantita da preparare|cantidad a fabricar|batch( size| weight)?|ansatz\\w*|chargengr\\w*|lot size|taille( du lot)?|makes|yield|gesamtmenge|menge gesamt|for|quantite totale|quantita totale|cantidad total|quantidade total|tamano( del)? lote|hoeveelheid totaal|batch totale|lotto|partita)\\s*[:=]?\\s*(?<said>.*)");

    private RowWords() {}

    static boolean isTotal(String text) {
        return TOTAL.matcher(Folding.of(text)).matches();
    }

    static boolean isOfAPhase(String text) {
        return OF_A_PHASE.matcher(Folding.of(text)).matches();
    }

    /** Whether the words name a phase, whatever stands beside them. */
    static boolean isPhase(String text) {
        String folded = Folding.of(text);
        return folded.length() <= 48 && PHASE_SURE.matcher(folded).matches();
    }

    /** Whether the words may name a phase where no amount stands beside them. */
    static boolean isPhaseAlone(String text) {
        String folded = Folding.of(text);
        return isPhase(text)
                || PHASE_LETTER.matcher(folded).matches()
                || PHASE_LIKE.matcher(folded).matches();
    }

    /** Whether the words say "phase" with its letter or number: "Phase A - water". */
    static boolean isPhaseNumbered(String text) {
        return PHASE_NUMBERED.matcher(Folding.of(text)).matches();
    }

    /** Whether the words say "phase", or are its letter. */
    static boolean isPhaseForCertain(String text) {
        return isPhase(text) || PHASE_LETTER.matcher(Folding.of(text)).matches();
    }

    /** Whether the words begin with the letter or number of a phase: "B  Oils - heat to 75 °C", "C: below 40 °C". */
    static boolean isLettered(String text) {
        return text.matches(
                "\\(?[A-H1-9][.:)]\\s*\\p{L}.*|[A-H]\\s+[-–]\\s*\\p{L}.*|[A-H]\\s+\\p{Lu}.*|[A-H]\\s{2,}\\p{L}.*");
    }

    static boolean isPhaseLetter(String text) {
        String folded = Folding.of(text);
        return PHASE_LETTER.matcher(folded).matches() || folded.matches("\\d{1,2}");
    }

    /** Whether a description of the work begins here. */
    static boolean isMethod(String text) {
        return METHOD.matcher(Folding.of(text)).matches();
    }

    /** Whether the words announce a fact about the whole: a date, a batch size, a pH. */
    static boolean isFact(String text) {
        String folded = Folding.of(text);
        int colon = folded.indexOf(':');
        String asked = colon > 0 && colon <= LONGEST_FACT ? folded.substring(0, colon) : folded;
        return FACT.matcher(folded).matches()
                || FACT.matcher(asked.replaceAll("\\s*\\([^()]*\\)$", "")).matches() && asked.length() < folded.length()
                || colon > 0
                        && Halves.of(asked).stream()
                                .anyMatch(half -> FACT.matcher(half).matches());
    }

    /** Whether the words say that ingredients follow, as in "Ingredients (makes 500 g):". */
    static boolean isList(String text) {
        return LIST.matcher(Folding.of(text)).matches();
    }

    /** The name behind "Product:" and the like, empty where it stands in the next cell. */
    static Optional<String> title(String text) {
        Matcher titled = TITLED.matcher(text.strip());
        return titled.matches() ? Optional.of(titled.group(1).strip()) : Optional.empty();
    }

    /** What stands behind "Batch size:" in the same cell, empty where it stands in the next. */
    static Optional<String> batch(String text) {
        Matcher batch = BATCH.matcher(Folding.of(text));
        if (batch.matches()) {
            return Optional.of(batch.group("said"));
        }
        Matcher makes = MAKES.matcher(Folding.of(text));
        return (isList(text) || MAKES_SO_MUCH.matcher(text).matches()) && makes.matches()
                ? Optional.of(makes.group("said"))
                : Optional.empty();
    }
}
