package stillroom.formulary.judgement.pot;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.rule.MarketLaw;
import stillroom.formulary.rule.Rule;
import stillroom.formulary.rule.RuleBook;
import stillroom.formulary.rule.Scope;

/**
 * A rule row of any day with the substances of the pot that it names; whether it speaks of the product is another question.
 *
 * @param shares in order of the composition, never empty
 */
public record NamingRow(Rule rule, List<Share> shares) {
    public NamingRow {
        shares = List.copyOf(shares);
    }

    /** Every row that names a substance of the product; by id, as a row's own hash would cost more than its judgement. */
    static List<NamingRow> of(Subject subject, List<Share> shares, RuleBook book) {
        Optional<MarketLaw> law = book.law(subject.brief().market());
        Map<String, Found> found = new LinkedHashMap<>();
        for (Share share : law.isEmpty() ? List.<Share>of() : shares) {
            if (share.amount().upper() > 0) {
                for (Rule rule : law.get().naming(share.names())) {
                    if (rule.scope().purpose() != Scope.Purpose.ADDED || share.isIngredient()) {
                        found.computeIfAbsent(rule.id(), id -> new Found(rule, new ArrayList<>()))
                                .shares
                                .add(share);
                    }
                }
            }
        }
        return found.values().stream()
                .map(one -> new NamingRow(one.rule, one.shares))
                .toList();
    }

    /** A row while its substances are still being gathered. */
    private record Found(Rule rule, List<Share> shares) {}
}
