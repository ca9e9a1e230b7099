package stillroom.formulary.pack;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.Problem;
import stillroom.formulary.quantity.Grams;

/** What speaks against a filling into a container; a note gives the reason for it all the same. */
public final class PackCheck {
    private PackCheck() {}

    /**
     * @param each mean content of a container [g]
     * @param celsius temperature of the bulk last seen [degrees Celsius]
     * @param density as filled [g/ml]; without it volumes are not compared
     */
    public static List<Problem> problems(
            Pack pack, PackLot lot, Grams each, Optional<Double> celsius, Optional<Double> density) {
        List<Problem> problems = new ArrayList<>();
        if (lot.held()) {
            problems.add(new Problem("packLot", "Lot " + lot.code() + " is held back" + ASKED));
        }
        pack.hotFillCelsius()
                .filter(most -> celsius.filter(now -> now > most).isPresent())
                .ifPresent(most -> problems.add(new Problem(
                        "note",
                        pack.name() + " is filled at " + Math.round(most) + " °C at most, the bulk was last seen at "
                                + Math.round(celsius.orElseThrow()) + " °C" + ASKED)));
        density.flatMap(value -> overBrim(pack, each, value)).ifPresent(problems::add);
        return problems;
    }

    private static final String ASKED = "; say in the note why it is filled all the same.";

    private static Optional<Problem> overBrim(Pack pack, Grams each, double density) {
        BigDecimal millilitres = each.value().divide(BigDecimal.valueOf(density), MathContext.DECIMAL64);
        return pack.capacityMillilitres()
                .filter(brim -> millilitres.compareTo(brim) > 0)
                .map(brim -> new Problem(
                        "total",
                        "That is " + millilitres.setScale(1, RoundingMode.HALF_EVEN) + " ml a container, and "
                                + pack.name() + " holds " + brim.toPlainString() + " ml to the brim" + ASKED));
    }
}
