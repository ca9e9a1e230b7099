package stillroom.formulary.batch;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import stillroom.formulary.quantity.Grams;

/**
 * What is together in one place: contents as they came in, less what evaporated from them.
 *
 * @param contents as added [g]
 * @param lost evaporated from these contents, not negative [g]
 */
public record Mixture(List<Content> contents, Grams lost) {
    public static final Mixture NONE = new Mixture(List.of(), Grams.ZERO);

    private static final MathContext DIGITS = MathContext.DECIMAL128;

    public Mixture {
        contents = List.copyOf(contents);
    }

    /** A mixture in two parts, which together are the whole exactly. */
    record Split(Mixture taken, Mixture left) {}

    /** Sum of the contents as added [g]. */
    public Grams asAdded() {
        return Grams.sum(contents.stream().map(Content::mass).toList());
    }

    /** What a balance would show [g]. */
    public Grams net() {
        return asAdded().minus(lost);
    }

    /** What is there of a material, as added [g]. */
    public Grams of(String materialKey) {
        return Grams.sum(contents.stream()
                .filter(content -> content.materialKey().equals(materialKey))
                .map(Content::mass)
                .toList());
    }

    Mixture plus(Content content) {
        List<Content> more = new ArrayList<>(contents);
        more.add(content);
        return new Mixture(more, lost);
    }

    Mixture plus(Mixture other) {
        List<Content> more = new ArrayList<>(contents);
        more.addAll(other.contents);
        return new Mixture(more, lost.plus(other.lost));
    }

    Mixture less(Grams evaporated) {
        return new Mixture(contents, lost.plus(evaporated));
    }

    /** Takes a part by mass, of the same make as the whole; all of it where more is asked than is there. */
    Split split(Grams mass) {
        Grams net = net();
        if (mass.compareTo(net) >= 0) {
            return new Split(this, NONE);
        }
        if (mass.signum() <= 0) {
            return new Split(NONE, this);
        }
        BigDecimal fraction = mass.value().divide(net.value(), DIGITS);
        List<Content> taken = new ArrayList<>();
        List<Content> left = new ArrayList<>();
        for (Content content : contents) {
            Grams part = part(content.mass(), fraction);
            taken.add(content.withMass(part));
            left.add(content.withMass(content.mass().minus(part)));
        }
        Grams takenLost = part(lost, fraction);
        return new Split(new Mixture(taken, takenLost), new Mixture(left, lost.minus(takenLost)));
    }

    private static Grams part(Grams whole, BigDecimal fraction) {
        return new Grams(whole.value().multiply(fraction, DIGITS));
    }
}
