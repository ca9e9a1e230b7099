package stillroom.formulary.imports;

import java.util.List;
import java.util.regex.Pattern;
import stillroom.formulary.formula.ReadingKind;

/** What a line that only says "q.s." is most probably added up to, told from its name. Common practice, no source. */
final class Adjuster {
    private static final Pattern WATER = Pattern.compile(
            ".*(\\baqua\\b|\\bwater\\b|wasser\\b|\\beau\\b|\\bagua\\b|\\bacqua\\b|hydrosol|hydrolat|hydrolate|\\bwoda\\b|\\bvoda\\b).*");
    private static final Pattern PH = Pattern.compile(
            ".*(citric|lactic|lactate|zitronens|citronens|milchs|acide|acido|\\bacid\\b|saure\\b|hydroxide|hydroxid|lauge|\\bnaoh\\b|\\bkoh\\b|triethanolamine|\\btea\\b|tromethamine|arginine|bicarbonate|\\bph\\b).*");
    private static final Pattern SCENT = Pattern.compile(
            ".*(fragrance|parfum|perfume|duft|essential oil|atherisches|\\baroma\\b|scent|huile essentielle).*");
    private static final Pattern SHADE =
            Pattern.compile(".*(colou?r|farbe|\\bci \\d{5}|\\bdye\\b|pigment|mica|oxide|colorant).*");
    private static final Pattern THICK = Pattern.compile(
            ".*(sodium chloride|\\bsalt\\b|\\bsalz\\b|\\bsel\\b|\\bgum\\b|thicken|verdick|cellulose|carbomer).*");

    private Adjuster() {}

    static boolean isWater(List<String> names) {
        return fits(WATER, names);
    }

    static boolean isAdjuster(List<String> names) {
        return kind(names) != ReadingKind.OTHER;
    }

    static ReadingKind kind(List<String> names) {
        if (fits(SHADE, names) && !fits(PH, names)) {
            return ReadingKind.SHADE;
        }
        if (fits(PH, names)) {
            return ReadingKind.PH;
        }
        if (fits(SCENT, names)) {
            return ReadingKind.ODOUR;
        }
        return fits(THICK, names) ? ReadingKind.VISCOSITY : ReadingKind.OTHER;
    }

    private static boolean fits(Pattern words, List<String> names) {
        return names.stream().anyMatch(name -> words.matcher(Folding.of(name)).matches());
    }
}
