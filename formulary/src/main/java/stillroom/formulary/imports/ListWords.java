package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the headings of lists of materials say, in six languages. The first that fits counts. */
final class ListWords {
    private static final int LONGEST = 60;

    /** A currency, as a sign or a word. */
    static final String CURRENCY =
            "€|\\$|£|¥|(?<!\\p{L})(eur|euros?|usd|gbp|chf|sfr|fr\\.|dollars?|pounds? sterling|sterling|pln|sek|nok|dkk|czk)(?!\\p{L})";

    /** "Bestand" is a stock, "Bestandteil" an ingredient. */
    static final String GERMAN_STOCK = "bestand(?!teil)";

    private static final Pattern MONEY = Pattern.compile(CURRENCY);
    private static final String MASS_WORD =
            "(kg|kgs|kilos?|kilogram\\w*|g|gr|gms?|grams?|gramm|grammes?|gramos|grammi|gram|mg|oz|ounces?|lbs?)(?!\\p{L})";
    private static final Pattern MASS = Pattern.compile("(?<![\\p{L}\\d.,])(\\d[\\d.,]*)?\\s?" + MASS_WORD);
    private static final Pattern VOLUME =
            Pattern.compile("(?<![\\p{L}\\d.,])(\\d[\\d.,]*)?\\s?(ml|cl|l|lt|lit(?:er|re|ro|ri)s?)(?![\\p{L}'’])");
    private static final Pattern BY_PACK = Pattern.compile(
            ".*(pack|gebinde|packung|\\bve\\b|\\bvpe\\b|conditionnement|emballage|colis|confezion|envase|verpakking|imballo|bidon|drum|bottle|flasche|flacon|\\bsack?\\b|\\bbag\\b|container).*");
    private static final Pattern BY_UNIT =
            Pattern.compile(".*(unit|unidad|eenheid|einheit|stuck|\\beach\\b|\\bp\\.?u\\.?(?!\\p{L})).*");
    private static final Pattern PER_CENT_WORDS = Pattern.compile(".*(percent|prozent|pourcent|\\bw/w\\b).*");
    private static final Pattern VALUE_WORDS =
            Pattern.compile(".*(value|valuation|wert\\b|wert[ (].*|valeur|valor\\b|valore|waarde|worth).*");
    private static final Pattern TOTAL_ALONE_WORDS = Pattern.compile(
            "(line |sub)?(total|totals|gesamt|summe|montant|importe|importo|bedrag|betrag|totale|totaal)");
    private static final Pattern SUPPLIER_WORDS = Pattern.compile(
            ".*(supplier|vendor|lieferant|fournisseur|proveedor|fornitor|leverancier|manufacturer|hersteller|fabricant|fabricante|fabrikant|produttore|bezugsquelle|bezogen|bought from|source\\b|\\bshop\\b|gekauft bei|achete chez|comprado en|handler|distribut|from\\b).*");
    private static final Pattern UNIT_WORDS = Pattern.compile(
            "(stock |pack )?(units?|einheit|uom|u/m|me|unite|unidad|udm|unita|eenheid|um|u\\.?m\\.?|mass unit)( of measure)?");
    private static final Pattern FOR_WORDS =
            Pattern.compile("(for|fur|pour|para|por|per|je|voor)( ?[(\\[]?(kg|g)[)\\]]?)?");
    private static final Pattern BOUGHT_WORDS = Pattern.compile(
            ".*(\\bbought\\b|purchased|gekauft|eingekauft|\\bachete\\b|comprad[oa]|acquistat[oa]|gekocht|aangekocht).*");
    private static final Pattern PACK_WORDS = Pattern.compile(
            ".*(pack|gebinde|packung|packungsgr|\\bvpe?\\b|\\bve\\b|container|drum|\\bsize\\b|bottle|\\bbag\\b|conditionnement|contenance|emballage|\\bformat|envase|presentac|confezion|imballo|verpakking|inhalt\\b|contenu|contenuto|contenido|inhoud|grosse\\b|\\bjar\\b|kanister|flacon|flasche|bidon|per unit|purchase quantity|kaufmenge|bought (g|kg|qty|amount)|gekaufte menge).*");
    private static final Pattern PRICE_WORDS = Pattern.compile(
            ".*(price|\\bcosts?\\b|preis|\\bkosten\\b|\\bek\\b|einkauf|\\bprix\\b|\\bcout\\b|\\btarifs?\\b|precio|\\bcostes?\\b|\\bcosto\\b|prezzo|prijs|\\bpaid\\b|bezahlt|\\bpaye\\b|pagado|pagato|betaald|\\brate\\b|\\bpris\\b|\\bcena\\b|\\bhinta\\b|\\bpreco\\b|kostet|\\bp\\.?u\\.? ?(ht|ttc)?$).*|(?!.*(?<!\\p{L})[mk]?g ?(/|per|pro|por|par|pour|auf|je|in|su|op|for|ogni|cada) ?\\d* ?k?g(?!\\p{L})).*((?<!\\p{L})(per|pro|je|por|par|al|au|el) |/ ?)(kg|kilo|\\d+ ?g)(?!\\p{L}).*");
    private static final Pattern STOCK_WORDS = Pattern.compile(
            ".*(\\bstock\\b|on[ -]hand|" + GERMAN_STOCK
                    + "|vorrat|inventory|inventur|inventaire|inventario|\\bstored\\b|existencia|giacenza|rimanen|\\bscort[ae]\\b|voorraad|in[ -]house|\\bleft\\b|\\bhave\\b|remain|restant|restmenge|restbestand|\\brest\\b|\\breste\\b|\\bresto\\b|queda|still here|still there|disponib|available|verfugbar|vorhanden|noch da|lagermenge|lagernd|auf lager|am lager|\\blager\\b|resterend|\\bcount(ed)?\\b|in (the )?(cupboard|cabinet|fridge|store)|on (the )?shelf|\\bistbestand|aanwezig|\\bholding).*");
    private static final Pattern NAME_WORDS = Pattern.compile(
            "(the |raw |list of )*(artikel|article|articulo|articolo|ware|produkte?|product|producto|prodotto|produit|designation|bezeichnung|libelle|denominazione|denominacion|omschrijving|benaming|intitule|raw materials?|rm name|trade name|handelsname|nom commercial|nombre comercial|nome commerciale|handelsnaam|product name|ingredient name|material name)\\b.*");
    private static final Map<Meaning, Pattern> FIRST = new LinkedHashMap<>();
    private static final Pattern CODE = Pattern.compile(
            "(art(ikel|icle|iculo|icolo)?|item|material|product|produkt|producto|prodotto|produit|rm|mat|stock|sku|supplier|lieferanten?|kunden|ref(erence|erencia|erenz)?|rohstoff|matiere|bestell|order|catalogue|internal|intern[eo]?|our)?[ .'-]*(\\bde )?[- ]?(no|nr|num|nummer|number|numero|code|codes|codigo|codice|kode|id|#|n°|nº|ref|reference|referencia|referenz|riferimento|sku|kennung|kurzel|key)\\.?( (article|articulo|articolo|interne|produit|producto|prodotto|fournisseur|proveedor|fornitore|supplier))?\\.?");
    private static final Pattern PLACE = Pattern.compile(
            ".*(location|lagerort|lagerplatz|\\bplatz\\b|\\bregal|(?<!on )(?<!on the )\\bshelf( no| nr|$)|emplacement|ubicac|ubicaz|locatie|\\bbin\\b|\\brack\\b|status|statut|estado|stato\\b|\\bqc\\b|\\bchecked|geprueft|gepruft|verifi|opened|geoffnet|ouvert|apert|abierto|geopend|storage|lagertemp|initials|\\bsign\\b|\\bsds\\b|\\bcoa\\b|link|website|\\burl\\b|country|herkunft|origin|pays|allerg|organic|\\bbio\\b|cosmos).*");
    private static final Pattern OTHER_STOCK = Pattern.compile(
            ".*(re-?order|\\bminimum|\\bmin\\b|\\bmin\\.|\\bmini\\b|maximum|\\bmax\\b|meldebestand|mindest|sicherheits|\\btarget\\b|seuil|alerte|minimo|minima|\\bpunto de|minimale|bestelpunt|bestelniveau|nachbestell|nachkauf|to order|to buy|order (qty|quantity|amount)|\\breorder|commander|bestellmenge|bestellen|bestellt|besteld|on order|pedir|pedido|riordin|ordinare|ordine|\\bneeded|\\bneed\\b|bedarf|besoin|\\bused\\b|verbrauch|\\busage\\b|utilis|consum|gebruikt|verbruik|entnahme|abgang|zugang|zukauf|reserv|allocated|gesperrt|quarantine qty|opening|anfangs|initial|\\bwar\\b|previous|old stock|last count|vorjahr|in transit|lead time|\\bmoq\\b|mindestbestell|lieferzeit|delai|warn|trigger|threshold|par level|low at|critical|days? left|months? left).*");
    private static final Pattern TOTAL_OF_MONEY =
            Pattern.compile(".*(total|gesamt|summe|montant|importe|importo|bedrag|betrag|extended|ensemble).*");
    private static final Pattern STRENGTH = Pattern.compile(
            ".*(active|wirkstoff|assay|purity|reinheit|strength|gehalt|vat|mwst|ust\\b|\\btva\\b|\\biva\\b|btw|discount|rabatt|remise|descuento|sconto|korting|use level|usage|recommended|dosage|einsatz|max|min|change|margin|share of|waste).*");

    static {
        put(
                Meaning.LOT,
                "ch\\.? ?-? ?b\\.?|(lot|lots|batch|batches|charge|chargen?|ch|lote|lotes|lotto|lotti|partij|partita|partie|los)[ .'-]*(no|nr|num|number|nummer|numero|code|id|ref|#|n°|nº)?\\.?|.*\\b(lot|batch|chargen?|charge|lotto|lote|partij)[ -]?(no|nr|num|number|nummer|code|id|#|ref)\\b.*|chargen?-?(nr|nummer|code)\\.?|lot(nummer|nr|code)|(n[o°º.]*|num\\.?|numero|codigo|code|codice) ?(de |di |del |du |dei )?(lot|lote|lotto|lots|charge)|.*\\b(supplier|manufacturer'?s?|hersteller|lieferanten) ?(lot|batch|charge).*|lotto (di )?prod.*|losnummer|partijnummer");
        put(
                Meaning.EXPIRY,
                ".*(expir|\\bexp\\b|best[ -]?before|best[ -]?by|\\bmhd\\b|mindesthaltbar|\\bbbd?e?\\b|use[ -]?by|haltbar|verfall|ablauf|\\bdluo\\b|\\bdlc\\b|\\bddm\\b|peremption|perime|caduc|consumo preferente|cons\\. pref|scaden|\\btmc\\b|\\btht\\b|retest|re-test|houdbaar|shelf life (end|until)|good until|valid until).*");
        put(
                Meaning.RECEIVED,
                ".*(received|receipt|eingang|date in\\b|delivered|delivery date|purchased?( on)?$|purchase date|date (of )?purchase|bought( on| at)?$|date bought|kaufdatum|gekauft( am)?$|geliefert|lieferdatum|date d'achat|achete( le)?$|recu( le)?$|date de reception|fecha de (compra|entrada|recep)|comprado|data (di )?(acquisto|arrivo|ricev)|ontvangen|ontvangst|aankoopdatum).*");
    }

    private ListWords() {}

    private static void put(Meaning meaning, String form) {
        FIRST.put(meaning, Pattern.compile(form));
    }

    /** The column that a heading announces; one that says nothing known is left out and not told. */
    static ListColumn read(int place, String heading) {
        String folded = Folding.of(heading).replaceAll("[:*]+$", "").strip();
        Meaning meaning = folded.isEmpty() || folded.length() > LONGEST ? Meaning.LEFT_OUT : ofEither(folded);
        boolean told = meaning != Meaning.LEFT_OUT || isKnown(folded);
        Basis basis = meaning == Meaning.PRICE ? basis(folded) : Basis.UNSAID;
        return new ListColumn(place, heading, meaning, unit(meaning, folded), basis, told);
    }

    /** Of a heading in two languages each half is tried. */
    private static Meaning ofEither(String folded) {
        Meaning whole = meaning(folded);
        return whole != Meaning.LEFT_OUT || isKnown(folded)
                ? whole
                : Halves.of(folded).stream()
                        .map(ListWords::meaning)
                        .filter(meaning -> meaning != Meaning.LEFT_OUT)
                        .findFirst()
                        .orElse(whole);
    }

    private static Meaning meaning(String folded) {
        if (BOUGHT_WORDS.matcher(folded).matches() && MASS.matcher(folded).find() && !isPrice(folded)) {
            return Meaning.PACK;
        }
        for (Map.Entry<Meaning, Pattern> entry : FIRST.entrySet()) {
            if (entry.getValue().matcher(folded).matches()) {
                return entry.getKey();
            }
        }
        if (isShare(folded)) {
            return STRENGTH.matcher(folded).matches() ? Meaning.LEFT_OUT : Meaning.AMOUNT;
        }
        if (isKnown(folded)) {
            return Meaning.LEFT_OUT;
        }
        return shelf(folded).orElseGet(() -> named(folded));
    }

    static boolean isShare(String folded) {
        return folded.contains("%") || PER_CENT_WORDS.matcher(folded).matches();
    }

    /** Whether a heading is known to be of no use here: codes, places, levels at which to order. */
    private static boolean isKnown(String folded) {
        return CODE.matcher(folded).matches() || PLACE.matcher(folded).matches() || isLevel(folded);
    }

    /** Whether a heading names a level or a flow of stock that is not what lies on the shelf. */
    static boolean isLevel(String folded) {
        return OTHER_STOCK.matcher(folded).matches()
                && !isPrice(folded)
                && !MONEY.matcher(folded).find();
    }

    private static Optional<Meaning> shelf(String folded) {
        boolean money = MONEY.matcher(folded).find();
        boolean mass = MASS.matcher(folded).find();
        if (VALUE_WORDS.matcher(folded).matches()
                && (!mass || money && !folded.matches(".*(per|pro|/|je|par|por|al) ?(kg|\\d+ ?g|g\\b).*"))) {
            return Optional.of(Meaning.VALUE);
        }
        if (TOTAL_OF_MONEY.matcher(folded).matches() && !mass && (money || isPrice(folded))) {
            return Optional.of(Meaning.VALUE);
        }
        if (TOTAL_ALONE_WORDS.matcher(folded).matches()) {
            return Optional.of(Meaning.VALUE);
        }
        if (isStock(folded) && money && !isPrice(folded) && !mass) {
            return Optional.of(Meaning.VALUE);
        }
        if (isPrice(folded) || money) {
            return Optional.of(Meaning.PRICE);
        }
        if (isStock(folded)) {
            return Optional.of(Meaning.STOCK);
        }
        if (SUPPLIER_WORDS.matcher(folded).matches()) {
            return Optional.of(Meaning.SUPPLIER);
        }
        if (UNIT_WORDS.matcher(folded).matches()) {
            return Optional.of(Meaning.UNIT);
        }
        if (FOR_WORDS.matcher(folded).matches()) {
            return Optional.of(Meaning.PACK);
        }
        if (PACK_WORDS.matcher(folded).matches()) {
            return Optional.of(Meaning.PACK);
        }
        return Optional.empty();
    }

    static boolean isPrice(String folded) {
        return PRICE_WORDS.matcher(folded).matches();
    }

    private static boolean isStock(String folded) {
        return STOCK_WORDS.matcher(folded).matches();
    }

    private static Meaning named(String folded) {
        if (NAME_WORDS.matcher(folded).matches()) {
            return Meaning.NAME;
        }
        return HeadingWords.read(0, folded)
                .map(Column::meaning)
                .filter(meaning -> !meaning.isOfTheShelf())
                .orElse(Meaning.LEFT_OUT);
    }

    private static Optional<Unit> unit(Meaning meaning, String folded) {
        if (meaning == Meaning.AMOUNT && (folded.contains("%") || folded.matches(".*(percent|prozent|w/w).*"))) {
            return Optional.of(Unit.PERCENT);
        }
        boolean masses = meaning == Meaning.STOCK || meaning == Meaning.PACK || meaning == Meaning.AMOUNT;
        Matcher mass = MASS.matcher(folded);
        if (!masses) {
            return Optional.empty();
        }
        if (mass.find()) {
            return mass.group(1) == null ? UnitWords.of(plain(mass.group(2))) : Optional.empty();
        }
        return VOLUME.matcher(folded).find() ? Optional.of(Unit.VOLUME) : Optional.empty();
    }

    /** What a text that speaks of a price says it is for. */
    static Basis basis(String folded) {
        Matcher mass = MASS.matcher(folded.replaceAll("kilo(-?price|-?preis|prijs)", "kilo price"));
        if (mass.find()) {
            return mass(mass.group(1), mass.group(2)).map(Basis::of).orElse(Basis.UNSAID);
        }
        if (VOLUME.matcher(folded).find()) {
            return Basis.of(Basis.Kind.VOLUME);
        }
        if (BY_PACK.matcher(folded).matches()) {
            return Basis.of(Basis.Kind.PACK);
        }
        return BY_UNIT.matcher(folded).matches() ? Basis.of(Basis.Kind.UNIT) : Basis.UNSAID;
    }

    private static Optional<BigDecimal> mass(@org.jspecify.annotations.Nullable String number, String word) {
        Optional<BigDecimal> count = number == null
                ? Optional.of(BigDecimal.ONE)
                : Numeral.read(number, Optional.empty())
                        .filter(numeral -> numeral.flags().isEmpty())
                        .map(Numeral::value);
        return count.filter(value -> value.signum() > 0)
                .flatMap(value -> UnitWords.of(plain(word)).flatMap(Unit::grams).map(grams -> grams.multiply(value)));
    }

    private static String plain(String word) {
        return word.startsWith("kilo") ? "kg" : word;
    }
}
