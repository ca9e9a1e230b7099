package stillroom.formulary.batch;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import stillroom.formulary.quantity.Grams;
import stillroom.science.weighing.NetContents;

/**
 * The content that a container is declared to hold.
 *
 * @param figure above 0 [ml or g]
 * @param inMillilitres whether it is a volume
 */
public record DeclaredContent(BigDecimal figure, boolean inMillilitres) {
    private static final BigDecimal TABLE_FROM = BigDecimal.valueOf(5);
    private static final BigDecimal TABLE_TO = BigDecimal.valueOf(10_000);

    /** Outside the table of the law the share of its nearest row is taken. Common practice, no source. */
    private static final BigDecimal SMALL_SHARE = new BigDecimal("0.09");

    private static final BigDecimal LARGE_SHARE = new BigDecimal("0.015");

    public DeclaredContent {
        if (figure.signum() <= 0) {
            throw new IllegalArgumentException(
                    "declared content is " + figure.toPlainString() + ", it must be above 0");
        }
    }

    /**
     * As a mass; a volume needs the density as filled [g].
     *
     * @param density [g/ml]
     */
    public Optional<Grams> grams(Optional<Double> density) {
        return inMillilitres ? density.map(d -> times(figure, d)) : Optional.of(new Grams(figure));
    }

    /** By how much a single container may be short, as a mass; a volume needs the density as filled [g]. */
    Optional<Grams> tolerableError(Optional<Double> density) {
        return inMillilitres ? density.map(d -> times(error(), d)) : Optional.of(new Grams(error()));
    }

    private BigDecimal error() {
        if (figure.compareTo(TABLE_FROM) < 0) {
            return figure.multiply(SMALL_SHARE);
        }
        return figure.compareTo(TABLE_TO) > 0
                ? figure.multiply(LARGE_SHARE)
                : NetContents.tolerableNegativeError(figure);
    }

    private static Grams times(BigDecimal millilitres, double density) {
        return new Grams(millilitres.multiply(BigDecimal.valueOf(density)).setScale(3, RoundingMode.HALF_EVEN));
    }

    @Override
    public String toString() {
        return figure.stripTrailingZeros().toPlainString() + (inMillilitres ? " ml" : " g");
    }
}
