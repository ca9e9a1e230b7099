package stillroom.formulary.judgement.law;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import stillroom.formulary.judgement.pot.Item;
import stillroom.formulary.judgement.pot.NamingRow;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.material.Family;
import stillroom.formulary.rule.Rule;
import stillroom.formulary.rule.Scope;

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
        return where(pot, rule -> rule.span().countsOn(day));
    }

    /** The rows that begin to count within so many months after the day. */
    static List<Applying> comingAfter(Pot pot, LocalDate day, int months) {
        return where(pot, rule -> rule.span().comesWithin(day, months));
    }

    /** The rows of any day that speak of the product. */
    public static List<Applying> ever(Pot pot) {
        return where(pot, rule -> true);
    }

    private static List<Applying> where(Pot pot, Predicate<Rule> wanted) {
        List<Applying> speaking = new ArrayList<>();
        for (NamingRow row : pot.rows()) {
            if (wanted.test(row.rule())) {
                Applying applying = new Applying(row.rule(), row.shares());
                if (speaks(applying, pot)) {
                    speaking.add(applying);
                }
            }
        }
        return List.copyOf(speaking);
    }

    private static boolean speaks(Applying applying, Pot pot) {
        Scope scope = applying.rule.scope();
        return scope.covers(pot.brief().type())
                && scope.speaksOf(pot.brief().people())
                && switch (scope.purpose()) {
                    case ANY, ADDED -> true;
                    case PRESERVATIVE -> applying.anyLine(pot, item -> item.is(Family.PRESERVATIVE));
                    case OTHER -> applying.anyLine(pot, item -> !item.is(Family.PRESERVATIVE));
                    case NOT_AS_COLOURANT -> applying.anyLine(pot, item -> !item.is(Family.COLOURANT));
                };
    }

    private boolean anyLine(Pot pot, Predicate<Item> wanted) {
        Set<String> lines = Set.copyOf(Pot.lines(shares));
        return pot.items().stream()
                .anyMatch(item -> lines.contains(item.portion().lineId()) && wanted.test(item));
    }

    /** Whether the row's warnings are due: from its share on, decided at the upper end. */
    public boolean demandsWarning(Pot pot) {
        return rule.demand()
                .abovePercent()
                .map(from -> Counted.of(shares, rule.limit(), pot.book()).percentHigh() > from)
                .orElse(true);
    }
}
