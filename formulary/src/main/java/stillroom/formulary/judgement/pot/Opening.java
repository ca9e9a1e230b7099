package stillroom.formulary.judgement.pot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillroom.formulary.evaluation.Composition;
import stillroom.formulary.evaluation.Portion;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.evaluation.SubstanceShare;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;

/**
 * Opens every material into its substances and sums them over all lines.
 *
 * <p>A constituent that names another card ({@code material:key}) is opened in turn, so that premixes of premixes come
 * out as substances; a card that contains itself is reported with the chain and left unopened.
 */
final class Opening {
    private static final String CARD = "material:";

    private final MaterialBook book;
    private final Map<String, Sum> sums = new LinkedHashMap<>();
    private final Set<String> unknown = new LinkedHashSet<>();
    private final List<String> loops = new ArrayList<>();
    private double unknownFraction;

    private Opening(MaterialBook book) {
        this.book = book;
    }

    /** The composition, and each chain of cards that bites its own tail. */
    record Opened(Composition composition, List<String> loops) {}

    static Opened open(Subject subject, MaterialBook book) {
        Opening opening = new Opening(book);
        for (Portion portion : subject.portions()) {
            opening.add(
                    portion, portion.materialKey(), portion.share(), Constituent.Role.INGREDIENT, new ArrayList<>());
        }
        return new Opened(opening.composition(subject.waterLostFraction()), List.copyOf(opening.loops));
    }

    /** One card taken apart, as if it were all that is in the pot. */
    static Opened open(String card, MaterialBook book) {
        Opening opening = new Opening(book);
        Portion whole = new Portion(card, "", card, MassFraction.exactly(1));
        opening.add(whole, card, whole.share(), Constituent.Role.INGREDIENT, new ArrayList<>());
        return new Opened(opening.composition(0), List.copyOf(opening.loops));
    }

    private void add(Portion portion, String card, MassFraction share, Constituent.Role role, List<String> chain) {
        if (chain.contains(card)) {
            loops.add(String.join(" → ", chain) + " → " + card);
            missing(card, share);
            return;
        }
        List<Constituent> parts = book.material(card).map(Material::composition).orElse(List.of());
        if (parts.isEmpty()) {
            missing(card, share);
            return;
        }
        chain.add(card);
        for (Constituent part : parts) {
            MassFraction inner = product(share, part.massFraction());
            Constituent.Role innerRole = lesser(role, part.role());
            if (part.substance().startsWith(CARD)) {
                add(portion, part.substance().substring(CARD.length()), inner, innerRole, chain);
            } else {
                sums.computeIfAbsent(part.substance(), key -> new Sum()).add(inner, innerRole, portion.lineId());
            }
        }
        chain.remove(chain.size() - 1);
    }

    private void missing(String card, MassFraction share) {
        unknown.add(card);
        unknownFraction += share.nominal();
    }

    private Composition composition(double waterLost) {
        List<SubstanceShare> shares = new ArrayList<>();
        sums.forEach((substance, sum) -> shares.add(sum.share(substance, waterLost)));
        shares.sort(Comparator.comparingDouble(
                        (SubstanceShare share) -> share.asAdded().nominal())
                .reversed());
        return new Composition(shares, List.copyOf(unknown), unknownFraction);
    }

    private static MassFraction product(MassFraction a, MassFraction b) {
        return new MassFraction(a.lower() * b.lower(), a.nominal() * b.nominal(), a.upper() * b.upper());
    }

    /** A part of an impurity is an impurity; a part of a perfume stays one. */
    private static Constituent.Role lesser(Constituent.Role a, Constituent.Role b) {
        return weight(a) <= weight(b) ? a : b;
    }

    private static int weight(Constituent.Role role) {
        return switch (role) {
            case INGREDIENT -> 2;
            case FRAGRANCE_PART -> 1;
            case IMPURITY -> 0;
        };
    }

    /** The running sum of one substance. */
    private static final class Sum {
        private double lower;
        private double nominal;
        private double upper;
        private Constituent.Role role = Constituent.Role.IMPURITY;
        private final Set<String> lines = new LinkedHashSet<>();

        void add(MassFraction share, Constituent.Role newRole, String line) {
            lower += share.lower();
            nominal += share.nominal();
            upper += share.upper();
            role = weight(newRole) > weight(role) ? newRole : role;
            lines.add(line);
        }

        SubstanceShare share(String substance, double waterLost) {
            double lost = Pot.isWater(substance) ? waterLost : 0;
            return new SubstanceShare(
                    substance, fraction(0, 1), fraction(lost, 1 - waterLost), role, List.copyOf(lines));
        }

        /** A draft may hold more than 100 %; a share never does. */
        private MassFraction fraction(double less, double over) {
            return new MassFraction(
                    clamp((lower - less) / over), clamp((nominal - less) / over), clamp((upper - less) / over));
        }

        private static double clamp(double fraction) {
            return Math.max(0, Math.min(1, fraction));
        }
    }
}
