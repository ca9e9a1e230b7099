package stillroom.formulary.judgement.law;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.rule.Rule;

/**
 * The law's highest percentages as sums over materials: what a search for a formula must keep. Conditions that are no sums
 * (a pH, a companion) are left to the evaluation.
 *
 * @param name what the row is about
 * @param percent highest mass percent of the product; 0 for what is prohibited
 * @param counted by material key, what the row counts in a product that is all of that material, at the upper end [%]
 */
public record LegalCeilings(String name, double percent, Map<String, Double> counted) {
    public LegalCeilings {
        counted = Map.copyOf(counted);
    }

    /**
     * @param all a pot in which every candidate material takes part
     * @param contents by material key, its substances
     */
    public static List<LegalCeilings> of(Pot all, LocalDate day, Map<String, List<Share>> contents) {
        List<LegalCeilings> ceilings = new ArrayList<>();
        for (Applying applying : Applying.on(all, day)) {
            Rule rule = applying.rule();
            if (rule.kind() == Rule.Kind.PROHIBITED) {
                ceilings.add(of(rule, 0, applying.shares(), all, contents));
            } else if ((rule.kind() == Rule.Kind.LIMIT || rule.kind() == Rule.Kind.LISTED)
                    && rule.limit().percent().isPresent()) {
                double percent = rule.limit().percent().get();
                LineLimits.groups(applying).forEach(group -> ceilings.add(of(rule, percent, group, all, contents)));
            }
        }
        return ceilings;
    }

    private static LegalCeilings of(
            Rule rule, double percent, List<Share> group, Pot all, Map<String, List<Share>> contents) {
        Set<String> keys = group.stream().map(Share::key).collect(Collectors.toSet());
        Map<String, Double> counted = new HashMap<>();
        contents.forEach((material, shares) -> {
            List<Share> named = shares.stream()
                    .filter(share -> keys.contains(share.key()))
                    .filter(share -> percent > 0 || share.isIngredient())
                    .toList();
            double at = Counted.of(named, rule.limit(), all.book()).percentHigh();
            if (at > 0) {
                counted.put(material, at);
            }
        });
        return new LegalCeilings(rule.name(), percent, counted);
    }
}
