package stillroom.formulary.imports;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The words and signs for units, in the languages in which makers keep their sheets. */
final class UnitWords {
    private static final Map<String, Unit> WORDS = Map.ofEntries(
            Map.entry("%", Unit.PERCENT),
            Map.entry("percent", Unit.PERCENT),
            Map.entry("per cent", Unit.PERCENT),
            Map.entry("prozent", Unit.PERCENT),
            Map.entry("pct", Unit.PERCENT),
            Map.entry("‰", Unit.PER_MILLE),
            Map.entry("ppm", Unit.PPM),
            Map.entry("g", Unit.GRAM),
            Map.entry("gr", Unit.GRAM),
            Map.entry("gm", Unit.GRAM),
            Map.entry("gms", Unit.GRAM),
            Map.entry("gram", Unit.GRAM),
            Map.entry("grams", Unit.GRAM),
            Map.entry("gramm", Unit.GRAM),
            Map.entry("gramme", Unit.GRAM),
            Map.entry("grammes", Unit.GRAM),
            Map.entry("gramos", Unit.GRAM),
            Map.entry("grammi", Unit.GRAM),
            Map.entry("mg", Unit.MILLIGRAM),
            Map.entry("kg", Unit.KILOGRAM),
            Map.entry("kilo", Unit.KILOGRAM),
            Map.entry("kgs", Unit.KILOGRAM),
            Map.entry("oz", Unit.OUNCE),
            Map.entry("ounce", Unit.OUNCE),
            Map.entry("ounces", Unit.OUNCE),
            Map.entry("lb", Unit.POUND),
            Map.entry("lbs", Unit.POUND),
            Map.entry("part", Unit.PART),
            Map.entry("parts", Unit.PART),
            Map.entry("teil", Unit.PART),
            Map.entry("teile", Unit.PART),
            Map.entry("partes", Unit.PART),
            Map.entry("parties", Unit.PART),
            Map.entry("pbw", Unit.PART));
    private static final Pattern SHARE_BY_WEIGHT = Pattern.compile(
            "(wt|w|m|ma|gew|mass|weight)?\\.?\\s?-?/?\\s?[wm]?\\s?\\(?%\\)?\\s*\\(?([wm]/[wm])?\\)?|w/w|m/m");
    private static final Pattern VOLUME = Pattern.compile(
            "(ml|cl|dl|l|liters?|litres?|cc|fl|drops?|tropfen|trpf|gouttes?|gotas|gocce|tsp|tbsp|el|tl|teaspoons?"
                    + "|tablespoons?|essl[oö]ffel|teel[oö]ffel|c\\. à [sc]|cuill[eè]res?|cucchiai(?:ni)?|cucharad(?:it)?as?|cups?|tassen?|pumps?|v/v|.*vol.*%|%\\s*v/v|iu|ie)\\.?");

    private UnitWords() {}

    /** The unit that a word or sign names, if it is one; of "drops / Tropfen" the first. */
    static Optional<Unit> of(String word) {
        return Arrays.stream(word.split(" / "))
                .map(UnitWords::one)
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<Unit> one(String word) {
        String plain = word.strip().toLowerCase(Locale.ROOT);
        String bare = plain.endsWith(".") ? plain.substring(0, plain.length() - 1) : plain;
        if (WORDS.containsKey(bare)) {
            return Optional.of(WORDS.get(bare));
        }
        if (VOLUME.matcher(bare).matches()) {
            return Optional.of(Unit.VOLUME);
        }
        return SHARE_BY_WEIGHT.matcher(bare).matches() ? Optional.of(Unit.PERCENT) : Optional.empty();
    }
}
