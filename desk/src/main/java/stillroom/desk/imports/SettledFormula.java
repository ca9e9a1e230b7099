package stillroom.desk.imports;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stillroom.desk.shell.Format;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.imports.Flag;
import stillroom.formulary.imports.ReadFormula;
import stillroom.ledger.imports.SpreadsheetFile;

/**
 * A formula as it would be stored.
 *
 * @param number within its sheet, from 1
 * @param take whether the maker wants it
 */
public record SettledFormula(
        int number, ReadFormula read, String title, ProductType type, boolean take, List<SettledLine> lines) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    /** What rounded percentages may be off together [%]. */
    private static final BigDecimal ROUNDED = new BigDecimal("0.1");

    /** Words in names of products; the longest that fits counts, so that a lip balm is one for the lips. */
    private static final Map<String, ProductType> TYPES = Map.ofEntries(
            Map.entry("shampoo", ProductType.SHAMPOO),
            Map.entry("conditioner", ProductType.HAIR_CONDITIONER),
            Map.entry("hand wash", ProductType.HAND_WASH),
            Map.entry("shower", ProductType.SHOWER_GEL),
            Map.entry("dusch", ProductType.SHOWER_GEL),
            Map.entry("cleanser", ProductType.FACE_CLEANSER),
            Map.entry("hand cream", ProductType.HAND_CREAM),
            Map.entry("handcreme", ProductType.HAND_CREAM),
            Map.entry("toner", ProductType.TONER),
            Map.entry("balm", ProductType.BALM),
            Map.entry("salve", ProductType.BALM),
            Map.entry("salbe", ProductType.BALM),
            Map.entry("balsam", ProductType.BALM),
            Map.entry("baume", ProductType.BALM),
            Map.entry("lip", ProductType.LIP_PRODUCT),
            Map.entry("lip balm", ProductType.LIP_PRODUCT),
            Map.entry("lippenbalsam", ProductType.LIP_PRODUCT),
            Map.entry("lippenpflege", ProductType.LIP_PRODUCT),
            Map.entry("spülung", ProductType.HAIR_CONDITIONER),
            Map.entry("gesichtswasser", ProductType.TONER),
            Map.entry("body butter", ProductType.BODY_LOTION),
            Map.entry("body oil", ProductType.BODY_OIL),
            Map.entry("körperöl", ProductType.BODY_OIL),
            Map.entry("massageöl", ProductType.BODY_OIL),
            Map.entry("deodorant", ProductType.DEODORANT),
            Map.entry("serum", ProductType.FACE_CREAM),
            Map.entry("face cream", ProductType.FACE_CREAM),
            Map.entry("gesichtscreme", ProductType.FACE_CREAM),
            Map.entry("lotion", ProductType.BODY_LOTION));

    static SettledFormula of(HeldSheet sheet, int number, CardNames cards) {
        ReadFormula read = sheet.read().formulas().get(number - 1);
        Decisions decisions = sheet.decisions();
        String title = read.title().isBlank() ? SpreadsheetFile.stem(sheet.file()) : read.title();
        String typed = decisions.of("title-" + number).orElse(title).strip();
        List<SettledLine> lines = read.lines().stream()
                .map(line -> SettledLine.of(line, number, decisions, cards))
                .toList();
        return new SettledFormula(
                number,
                read,
                typed.substring(0, Math.min(120, typed.length())),
                decisions.of("type-" + number).flatMap(SettledFormula::type).orElse(guessedType(typed)),
                !decisions.wereMade() || decisions.isTicked("take-" + number),
                lines);
    }

    public static List<SettledFormula> all(HeldSheet sheet, CardNames cards) {
        return Stream.iterate(1, number -> number + 1)
                .limit(sheet.read().formulas().size())
                .map(number -> of(sheet, number, cards))
                .toList();
    }

    private static Optional<ProductType> type(String said) {
        return Stream.of(ProductType.values())
                .filter(type -> type.name().equals(said))
                .findFirst();
    }

    private static ProductType guessedType(String title) {
        String plain = title.toLowerCase(Locale.ROOT);
        return TYPES.entrySet().stream()
                .filter(entry -> plain.contains(entry.getKey()))
                .max(java.util.Comparator.comparingInt(entry -> entry.getKey().length()))
                .map(Map.Entry::getValue)
                .orElse(ProductType.OTHER_LEAVE_ON);
    }

    List<SettledLine> stored() {
        return lines.stream().filter(line -> !line.leftOut()).toList();
    }

    /** What keeps it from being stored, in sentences. */
    public List<String> obstacles() {
        Stream<String> name = title.isBlank() ? Stream.of("The product has no name.") : Stream.empty();
        long rests = stored().stream()
                .filter(line ->
                        line.amount().filter(Amount.ToHundred.class::isInstance).isPresent())
                .count();
        Stream<String> twice = rests > 1 ? Stream.of("Two lines take what is left to 100; one can.") : Stream.empty();
        Stream<String> lines = stored().stream().flatMap(line -> line.obstacle().stream());
        return Stream.of(name, twice, lines).flatMap(all -> all).toList();
    }

    /** What may be wrong with it and was not decided, in sentences. */
    public List<String> doubts() {
        Stream<String> whole = read.doubts().map(Flag::sentence);
        Stream<String> lines = stored().stream()
                .flatMap(line -> line.doubts().stream().map(doubt -> line.read().name() + ": " + doubt));
        return Stream.concat(whole, lines).toList();
    }

    /** What the stated amounts come to, as they stand now [%]. */
    private BigDecimal sum() {
        return stored().stream()
                .flatMap(line -> line.amount().stream())
                .map(amount -> amount.match(
                        fixed -> fixed.percent().value(),
                        () -> BigDecimal.ZERO,
                        reading -> reading.expected().value()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private boolean hasRest() {
        return stored().stream()
                .anyMatch(line ->
                        line.amount().filter(Amount.ToHundred.class::isInstance).isPresent());
    }

    /** Whether the amounts make 100, or leave something for the line that takes the rest. */
    public boolean addsUp() {
        BigDecimal off = sum().subtract(HUNDRED);
        return hasRest() ? off.signum() < 0 : off.abs().compareTo(ROUNDED) <= 0;
    }

    /** The sum under the lines, in a sentence. */
    public String together() {
        boolean open = stored().stream().anyMatch(line -> line.amount().isEmpty());
        String sum =
                "Together " + Format.decimal(sum(), 2) + " %" + (open ? " without the lines that lack an amount" : "");
        if (addsUp()) {
            return hasRest() ? sum + "; what is left to 100 is taken by the q.s. line." : sum + ".";
        }
        return hasRest()
                ? sum + ": nothing is left for the line that takes the rest."
                : sum + ": not 100. Change an amount, or let one line be q.s. to 100.";
    }

    public boolean isSound() {
        return obstacles().isEmpty() && doubts().isEmpty();
    }
}
