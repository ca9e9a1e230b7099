package stillroom.formulary.material;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.PercentRange;

/** What a certificate says that the card would not let one expect: another grade, another dilution, or a wrong bottle. */
public final class CertificateCheck {
    /** A pH is stated to a tenth; a certificate that differs by less says the same. Common practice, no source. */
    private static final double PH_ROUNDING = 0.05;

    /** A density off by more is another grade or another temperature. Common practice, no source. */
    private static final double DENSITY_SHARE = 0.02;

    private CertificateCheck() {}

    /** One sentence each; empty where all that can be compared agrees. */
    public static List<String> of(Material card, Lot lot) {
        List<String> says = new ArrayList<>();
        lot.certificate().ifPresent(certificate -> {
            certificate.ownPh().ifPresent(pH -> pH(card, pH).ifPresent(says::add));
            certificate
                    .densityGramsPerMillilitre()
                    .ifPresent(density -> density(card, density).ifPresent(says::add));
            certificate
                    .strength()
                    .ifPresent(strength -> strength(card, strength).ifPresent(says::add));
        });
        return List.copyOf(says);
    }

    private static Optional<String> pH(Material card, double pH) {
        return card.ownPh()
                .filter(range -> pH < range.low() - PH_ROUNDING || pH > range.high() + PH_ROUNDING)
                .map(range -> "The certificate says pH " + plain(pH) + ", the card " + range(range)
                        + ": look whether it is the same grade, and the same dilution.");
    }

    private static Optional<String> density(Material card, double density) {
        return card.densityGramsPerMillilitre()
                .filter(usual -> Math.abs(density - usual) > DENSITY_SHARE * usual)
                .map(usual -> "The certificate says " + plain(density) + " g/ml, the card " + plain(usual)
                        + ": look whether it is the same grade.");
    }

    /** A lot may well be somewhat off a point; off a stated range it is out of what was bought. */
    private static Optional<String> strength(Material card, Strength stated) {
        return card.strength()
                .filter(nominal -> nominal.basis() == stated.basis())
                .map(Strength::percent)
                .filter(range -> range.low().compareTo(range.high()) < 0)
                .filter(range -> stated.percent().high().compareTo(range.low()) < 0
                        || stated.percent().low().compareTo(range.high()) > 0)
                .map(range ->
                        "The certificate says " + range(stated.percent()) + " %, the card " + range(range) + " %.");
    }

    private static String range(Interval range) {
        return range.low() == range.high() ? plain(range.low()) : plain(range.low()) + " to " + plain(range.high());
    }

    private static String range(PercentRange range) {
        return range.low().equals(range.high()) ? range.low().toString() : range.low() + " to " + range.high();
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
