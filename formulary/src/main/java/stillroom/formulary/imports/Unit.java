package stillroom.formulary.imports;

import java.math.BigDecimal;
import java.util.Optional;

/** In what an amount is given. */
public enum Unit {
    PERCENT("%"),
    /** 1 is the whole. */
    FRACTION("share of 1"),
    PER_MILLE("‰"),
    PPM("ppm"),
    MILLIGRAM("mg"),
    GRAM("g"),
    KILOGRAM("kg"),
    /** Avoirdupois. */
    OUNCE("oz"),
    POUND("lb"),
    PART("parts"),
    /** Millilitres, drops, spoons: no mass without a density. */
    VOLUME("a volume");

    private final String words;

    Unit(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** How many grams one of it is; empty where it is no mass. The pound is 453.59237 g by definition. */
    Optional<BigDecimal> grams() {
        return switch (this) {
            case MILLIGRAM -> Optional.of(new BigDecimal("0.001"));
            case GRAM -> Optional.of(BigDecimal.ONE);
            case KILOGRAM -> Optional.of(new BigDecimal("1000"));
            case OUNCE -> Optional.of(new BigDecimal("28.349523125"));
            case POUND -> Optional.of(new BigDecimal("453.59237"));
            case PERCENT, FRACTION, PER_MILLE, PPM, PART, VOLUME -> Optional.empty();
        };
    }

    /** How many per cent one of it is; empty where that depends on the whole. */
    Optional<BigDecimal> percent() {
        return switch (this) {
            case PERCENT -> Optional.of(BigDecimal.ONE);
            case FRACTION -> Optional.of(BigDecimal.valueOf(100));
            case PER_MILLE -> Optional.of(new BigDecimal("0.1"));
            case PPM -> Optional.of(new BigDecimal("0.0001"));
            case MILLIGRAM, GRAM, KILOGRAM, OUNCE, POUND, PART, VOLUME -> Optional.empty();
        };
    }

    /** Whether it is a share of the product by itself. */
    boolean isShare() {
        return percent().isPresent();
    }
}
