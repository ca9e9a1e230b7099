package stillroom.formulary.judgement.craft;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillroom.formulary.judgement.pot.Item;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.FragranceCertificate;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.Material;

/** The perfumes and essential oils of a product, each summed over all lines and premixes that bring it. */
final class Perfumes {
    private static final String CARD = "material:";
    private static final int DEEPEST = 8;

    private final Pot pot;
    private final Map<String, Perfume> byCard = new LinkedHashMap<>();

    private Perfumes(Pot pot) {
        this.pot = pot;
    }

    /**
     * One perfume or oil.
     *
     * @param share of the product as added, 0 to 1
     */
    record Perfume(Material card, MassFraction share, Set<String> lines) {
        List<String> lineIds() {
            return new ArrayList<>(lines);
        }

        /** Furocoumarins that it brings at the upper end [mg per kg of product]; the certificate before the card's parts. */
        double furocoumarinsMilligramsPerKilogram() {
            double inIt = card.certificate()
                    .flatMap(FragranceCertificate::furocoumarinsMilligramsPerKilogram)
                    .orElseGet(() -> card.composition().stream()
                                    .filter(part -> FUROCOUMARINS.contains(part.substance()))
                                    .mapToDouble(part -> part.massFraction().upper())
                                    .sum()
                            * 1e6);
            return inIt * share.upper();
        }
    }

    private static final Set<String> FUROCOUMARINS = Set.of(
            "bergapten",
            "5-methoxypsoralen",
            "8-methoxypsoralen",
            "methoxsalen",
            "bergamottin",
            "isopimpinellin",
            "oxypeucedanin",
            "imperatorin",
            "psoralen");

    static List<Perfume> of(Pot pot) {
        Perfumes perfumes = new Perfumes(pot);
        for (Item item : pot.items()) {
            item.material()
                    .ifPresent(card -> perfumes.add(
                            card, item.portion().share(), item.portion().lineId(), DEEPEST));
        }
        return new ArrayList<>(perfumes.byCard.values());
    }

    private void add(Material card, MassFraction share, String line, int deep) {
        if (isPerfume(card)) {
            Perfume before = byCard.get(card.key());
            Set<String> lines = new LinkedHashSet<>(before == null ? Set.of() : before.lines);
            lines.add(line);
            byCard.put(card.key(), new Perfume(card, before == null ? share : sum(before.share, share), lines));
            return;
        }
        for (Constituent part : card.composition()) {
            if (deep > 0 && part.substance().startsWith(CARD)) {
                pot.book()
                        .material(part.substance().substring(CARD.length()))
                        .ifPresent(inner -> add(inner, product(share, part.massFraction()), line, deep - 1));
            }
        }
    }

    private boolean isPerfume(Material card) {
        return card.certificate().isPresent()
                || card.composition().stream()
                        .flatMap(part -> pot.book().substance(part.substance()).stream())
                        .anyMatch(substance -> substance.is("fragrance") || substance.is("essential-oil"));
    }

    private static MassFraction sum(MassFraction a, MassFraction b) {
        return new MassFraction(
                Math.min(1, a.lower() + b.lower()),
                Math.min(1, a.nominal() + b.nominal()),
                Math.min(1, a.upper() + b.upper()));
    }

    private static MassFraction product(MassFraction a, MassFraction b) {
        return new MassFraction(a.lower() * b.lower(), a.nominal() * b.nominal(), a.upper() * b.upper());
    }
}
