package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What headings say, in the languages in which makers keep their sheets. The first that fits counts. */
final class HeadingWords {
    private static final int LONGEST = 48;
    private static final Map<Meaning, Pattern> FIRST = new LinkedHashMap<>();
    private static final Map<Meaning, Pattern> THEN = new LinkedHashMap<>();
    private static final Pattern SHARE_OF_PHASE = Pattern.compile(
            ".*(% ?(in|of|der|de la) ?(the )?(phase|fase)|phasen-?%|% ?(of|der|des|de los|degli|van|in) ?(the )?(total )?(oils?|fats?|ole|fette|huiles|aceites|oli\\b|olien)).*");
    private static final Pattern PERCENT = Pattern.compile(
            ".*(%|(?<!\\p{L})percent|prozent|pourcent|porcent|percentu|per cent|\\bpct\\b|\\bw/w\\b|\\bm/m\\b|\\bppm\\b|‰).*");
    private static final Pattern QUANTITY = Pattern.compile(
            "(the |total |target |theor\\w* |old |new )?(v\\d+([.]\\d+)?|(version|trial|test|versuch|variante?|essai|prova|ensayo|muster|run|experiment|proef) ?(no|nr|n°)?[.]? ?(\\d{1,3}|[a-h])|einsatz(menge)?|quantidade|qta|massa|mangd|maengde|andel|teneur|quota|dosaggio|amount|quantit\\w*|qty|qte|menge|sollmenge|dosage|dosierung|dose|dosis|anteil\\w*|cantidad|hoeveelheid|mengd|ilosc|mnozstvi"
                    + "|how much|conc\\w*|konz\\w*|level|input|einwaage|weight|wt|gewicht|masse|mass|poids|peso|pesee|proportion\\w*|share|ratio|rezeptur|formula|formule|value|wert)\\b.*");
    private static final Pattern UNIT_IN = Pattern.compile(
            "(?<![\\p{L}\\d])(\\d[\\d.,]*)?\\s?(mg|kg|kilo|g|gr|grams?|gramm|grammes?|gramos|grammi|oz|ounces?|lbs?|ml|drops|tropfen|parts|teile|parties|partes)(?!\\p{L})");
    private static final Pattern PER_KILO = Pattern.compile(".*(g ?/ ?kg|per 1000|pro 1000|auf 1000).*");

    static {
        put(
                FIRST,
                Meaning.FORMULA,
                "(formula|formulation|formel|rezept(ur)?|recipe|recette|receta|ricetta|recept|formule|finished product|fertigprodukt)[ _.-]*(no|nr|name|code|id|number|nummer|bezeichnung|title|titel|nom|nombre|nome|naam|numero)\\.?");
        put(FIRST, Meaning.UNIT, "units?|einheit|uom|unite|unidad|u\\.?m\\.?|measure|eenheid");
        put(FIRST, Meaning.CAS, "cas|.*\\bcas\\b.*|.*\\bcas-?(no|nr|number|nummer).*");
        put(
                FIRST,
                Meaning.PRICE,
                ".*(price|cost|preis|kosten|\\bprix\\b|\\bcout\\b|precio|\\bcosto\\b|\\bcoste\\b|prezzo|prijs|€|\\$|£|\\beur\\b|\\busd\\b|\\bgbp\\b).*");
        put(
                FIRST,
                Meaning.LEFT_OUT,
                ".*(recommended|usage|use level|\\bmax\\b|\\bmin\\b|maximum|minimum|limit|einsatzkonz\\w*|einsatz ?%|typical|empfohlen|range|density|dichte|densite|densidad|densita|\\bhlb\\b|\\bg ?/ ?(ml|cm)|\\bcum\\b|cumul|kumul|running).*");
        put(
                FIRST,
                Meaning.EXPIRY,
                ".*(expir|\\bexp\\b|best before|best by|\\bmhd\\b|\\bbbd\\b|\\bbbe\\b|use by|haltbar|\\bdlc\\b|\\bddm\\b|peremption|caducidad|scadenza|retest|houdbaar).*");
        put(
                FIRST,
                Meaning.RECEIVED,
                ".*(received|receipt|eingang|purchase date|bought|kaufdatum|bestellt|date d'achat|delivered|date in).*");
        put(
                FIRST,
                Meaning.LOT,
                "(lot|batch|charge|chargen|lote|lotto)[ -]?(no|nr|number|nummer|code|id|#|n°|numero)?\\.?|.*\\b(lot|batch|chargen) ?-?(no|nr|number|nummer|code|#).*");
        put(
                FIRST,
                Meaning.STOCK,
                ".*(\\bstock\\b|on hand|" + ListWords.GERMAN_STOCK
                        + "|vorrat|inventory|\\bstored\\b|en stock|existencias|giacenza|voorraad|pack ?size|gebinde|in house).*");
        put(
                FIRST,
                Meaning.SUPPLIER,
                ".*(supplier|vendor|lieferant|fournisseur|proveedor|fornitore|leverancier|manufacturer|hersteller|bezugsquelle|bought from|shop).*");
        put(
                FIRST,
                Meaning.FUNCTION,
                ".*(function|funktion|\\brole\\b|purpose|fonction|funcion|\\bwhy\\b|zweck|funzione|functie|category|kategorie|funkcj).*|use|type|typ");
        put(
                THEN,
                Meaning.PHASE,
                "(stage|del|etape|schritt|stufe|stap|abschnitt|group|gruppe|groupe|grupo|gruppo|vaihe|phase|fase|faza|faze|phasen|fas|teil|part|partie|ph\\.)( ?(no|nr|#|n°|name))?\\.?");
        put(THEN, Meaning.INCI, ".*\\binci\\b.*");
        put(
                THEN,
                Meaning.COMMON,
                ".*(common|trade|trivial|deutsch|german|englisch|english|anglais|francais|french|spanish|italian|handelsname|commercial|local name|bezeichnung|translation|ubersetzung|alternative name|also known|synonym|other name|botanical).*");
        put(
                THEN,
                Meaning.NAME,
                "(the |raw |list of |name of )*(ingredien\\w*|description|designation|descri(zione|pcion)|denominaci\\w*|denominazione|benaming|material\\w*|rohstoff\\w*|zutat\\w*|inhaltsstoff\\w*|bestandteile?\\b|matieres?\\b.*|raaka-?aine\\w*|alapanyag\\w*|surowiec|slozka|ravara\\w*|rastoff|sirovin\\w*|ingrediente\\w*|materias? primas?.*|materia prima|substan\\w*|component\\w*|komponente\\w*|grondstof\\w*|name|names|nom|nombre|nome|naam|item|items|chemical\\w*|constituent\\w*|compound|skladnik\\w*|surovin\\w*|ravara|what|stoff\\w*|einsatzstoff\\w*|product|produkt|rm)\\b.*");
        put(
                THEN,
                Meaning.NOTE,
                ".*(note|comment|remark|bemerkung|anmerkung|hinweis|remarque|observac|kommentar|opmerking|procedure|method|instruction|arbeitsschritt|arbeitsgang|verarbeitung|bearbeitung|zugabe|handling|what to do|\\bhow\\b|\\btips?\\b|\\btipps?\\b|conseil|consigli|consejo|traitement|operation|etapa|paso|\\btick\\b|visum|\\bsign\\b|weighed|herstellung|what to do|temp|beschreibung).*");
        put(THEN, Meaning.NUMBER, "(no|nr|#|n°|num|pos|position|line|sl|s|sr|lfd|item|lp|step)\\.? ?(no|nr|#)?\\.?");
    }

    private HeadingWords() {}

    private static void put(Map<Meaning, Pattern> words, Meaning meaning, String form) {
        words.put(meaning, Pattern.compile(form));
    }

    /** The column that a heading announces, if it announces one. */
    static Optional<Column> read(int place, String heading) {
        return whole(place, heading)
                .or(() -> Halves.of(heading).stream()
                        .flatMap(half -> whole(place, half).stream())
                        .findFirst()
                        .map(half -> half.called(heading)));
    }

    private static Optional<Column> whole(int place, String heading) {
        String folded = Folding.of(heading).replaceAll("[:*]+$", "").strip();
        boolean code = heading.matches("\\p{Lu}{1,4}[-./ ]?\\d{2,}.*")
                && !UNIT_IN.matcher(folded).find();
        if (folded.isEmpty() || folded.length() > LONGEST || code) {
            return Optional.empty();
        }
        if (SHARE_OF_PHASE.matcher(folded).matches()) {
            return column(place, heading, Meaning.LEFT_OUT);
        }
        return first(FIRST, folded)
                .or(() -> amount(folded))
                .or(() -> first(THEN, folded))
                .flatMap(meaning -> meaning == Meaning.AMOUNT
                        ? Optional.of(amounts(place, heading, folded))
                        : column(place, heading, meaning));
    }

    static boolean isShare(String heading) {
        return PERCENT.matcher(Folding.of(heading)).matches();
    }

    private static Optional<Meaning> first(Map<Meaning, Pattern> words, String folded) {
        return words.entrySet().stream()
                .filter(entry -> entry.getValue().matcher(folded).matches())
                .map(Map.Entry::getKey)
                .findFirst();
    }

    private static Optional<Column> column(int place, String heading, Meaning meaning) {
        return Optional.of(new Column(place, heading, meaning, Optional.empty(), Optional.empty(), false));
    }

    private static Optional<Meaning> amount(String folded) {
        boolean names = folded.matches(".*(\\binci\\b|ingredient|rohstoff|\\bname\\b|zutat|material).*");
        boolean says = PERCENT.matcher(folded).matches()
                || QUANTITY.matcher(folded).matches()
                || UNIT_IN.matcher(folded).find();
        return says && !(names && !QUANTITY.matcher(folded).matches()) ? Optional.of(Meaning.AMOUNT) : Optional.empty();
    }

    private static Column amounts(int place, String heading, String folded) {
        Optional<Unit> unit = Optional.empty();
        Optional<BigDecimal> whole = Optional.empty();
        Matcher word = UNIT_IN.matcher(folded);
        if (PERCENT.matcher(folded).matches()) {
            unit = Optional.of(
                    folded.contains("ppm") ? Unit.PPM : folded.contains("‰") ? Unit.PER_MILLE : Unit.PERCENT);
            if (folded.matches(".*(v/v|vol).*")) {
                unit = Optional.of(Unit.VOLUME);
            }
        } else if (PER_KILO.matcher(folded).matches()) {
            unit = Optional.of(Unit.GRAM);
            whole = Optional.of(BigDecimal.valueOf(1000));
        } else if (word.find()) {
            unit = UnitWords.of(word.group(2));
            whole = whole(word, unit);
            if (whole.isPresent()) {
                unit = Optional.of(Unit.GRAM);
            }
        }
        return new Column(place, heading, Meaning.AMOUNT, unit, whole, false);
    }

    /** "for 500 g" names the whole and leaves the column in grams. */
    private static Optional<BigDecimal> whole(Matcher word, Optional<Unit> unit) {
        if (word.group(1) == null) {
            return Optional.empty();
        }
        return Numeral.read(word.group(1), Optional.empty())
                .flatMap(numeral -> unit.flatMap(Unit::grams).map(grams -> grams.multiply(numeral.value())));
    }
}
