package stillroom.formulary.judgement.law;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.judgement.pot.Item;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.material.Family;
import stillroom.formulary.rule.MarketLaw;
import stillroom.formulary.rule.Rule;

/**
 * A rule row that speaks of this product, with the substances of the product that it names.
 *
 * @param shares in order of the composition, never empty
 */
public record Applying(Rule rule, List<Share> shares) {
    public Applying {
        shares = List.copyOf(shares);
    }

    /** The rows of the product's market that count on the day. */
    public static List<Applying> on(Pot pot, LocalDate day) {
        return pot.rules().law(pot.brief().market()).stream()
                .flatMap(law -> rulesNaming(law, pot).stream())
                .filter(rule -> rule.span().countsOn(day))
                .flatMap(rule -> of(rule, pot).stream())
                .toList();
    }

    /** The rows that begin to count within so many months after the day. */
    static List<Applying> comingAfter(Pot pot, LocalDate day, int months) {
        return pot.rules().law(pot.brief().market()).stream()
                .flatMap(law -> rulesNaming(law, pot).stream())
                .filter(rule -> rule.span().comesWithin(day, months))
                .flatMap(rule -> of(rule, pot).stream())
                .toList();
    }

    private static Set<Rule> rulesNaming(MarketLaw law, Pot pot) {
        Set<Rule> rules = new LinkedHashSet<>();
        pot.shares().forEach(share -> rules.addAll(law.naming(share.key())));
        return rules;
    }

    private static Optional<Applying> of(Rule rule, Pot pot) {
        boolean spokenOf = rule.scope().covers(pot.brief().type());
        List<Share> named = new ArrayList<>();
        for (Share share : pot.shares()) {
            if (share.amount().upper() > 0 && rule.substances().contains(share.key())) {
                named.add(share);
            }
        }
        return spokenOf && !named.isEmpty() && purposeFits(rule, named, pot)
                ? Optional.of(new Applying(rule, named))
                : Optional.empty();
    }

    private static boolean purposeFits(Rule rule, List<Share> named, Pot pot) {
        return switch (rule.scope().purpose()) {
            case ANY -> true;
            case PRESERVATIVE -> anyLine(named, pot, true);
            case OTHER -> anyLine(named, pot, false);
        };
    }

    private static boolean anyLine(List<Share> named, Pot pot, boolean preservative) {
        Set<String> lines = Set.copyOf(Pot.lines(named));
        for (Item item : pot.items()) {
            if (lines.contains(item.portion().lineId()) && item.is(Family.PRESERVATIVE) == preservative) {
                return true;
            }
        }
        return false;
    }
}
