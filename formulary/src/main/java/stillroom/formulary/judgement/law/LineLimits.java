package stillroom.formulary.judgement.law;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillroom.formulary.evaluation.Portion;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.judgement.pot.Item;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.PriceBook;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;
import stillroom.formulary.rule.Limit;
import stillroom.formulary.rule.Rule;
import stillroom.formulary.rule.RuleBook;

/**
 * Between which percentages the lines of a formula may be rounded: not above what the law of its market leaves, not
 * below the least of a preservative. Judged on nominal compositions; where a range of a data sheet crosses a limit, the
 * evaluation says so.
 */
public final class LineLimits {
    private static final int DECIMALS = 8;

    private LineLimits() {}

    /**
     * By line id, for those lines only that something limits [%].
     *
     * @param subject the formula with its amounts resolved
     * @param day whose law is asked
     */
    public static Map<String, PercentRange> of(Subject subject, MaterialBook book, RuleBook rules, LocalDate day) {
        Pot pot = Pot.open(subject, book, PriceBook.ofCards(book), rules, day);
        Map<String, BigDecimal> most = most(pot, day);
        Map<String, PercentRange> allowed = new HashMap<>();
        for (Item item : pot.items()) {
            String line = item.portion().lineId();
            Percent least = least(item);
            BigDecimal high = most.getOrDefault(line, BigDecimal.valueOf(100)).max(least.value());
            if (most.containsKey(line) || !least.isZero()) {
                allowed.put(line, new PercentRange(least, new Percent(high)));
            }
        }
        return allowed;
    }

    /** Lines that share a limit may each grow in proportion: together they then just reach it. */
    private static Map<String, BigDecimal> most(Pot pot, LocalDate day) {
        Map<String, BigDecimal> most = new HashMap<>();
        for (Applying applying : Applying.on(pot, day)) {
            Rule rule = applying.rule();
            boolean law = rule.kind() == Rule.Kind.LIMIT || rule.kind() == Rule.Kind.LISTED;
            if (law && rule.limit().percent().isPresent()) {
                groups(applying).forEach(group -> limit(Counted.of(group, rule.limit(), pot.book()), rule, pot, most));
            }
        }
        return most;
    }

    static List<List<Share>> groups(Applying applying) {
        return applying.rule().limit().counting() == Limit.Counting.SUM
                ? List.of(applying.shares())
                : applying.shares().stream().map(List::of).toList();
    }

    private static void limit(Counted counted, Rule rule, Pot pot, Map<String, BigDecimal> most) {
        if (!(counted.percent() > 0)) {
            return;
        }
        double room = rule.limit().percent().orElseThrow() / counted.percent();
        Set<String> lines = Set.copyOf(counted.lines());
        for (Item item : pot.items()) {
            Portion portion = item.portion();
            double percent = portion.share().nominal() * 100 * room;
            if (lines.contains(portion.lineId()) && percent < 100) {
                BigDecimal highest = BigDecimal.valueOf(percent).setScale(DECIMALS, RoundingMode.HALF_EVEN);
                most.merge(portion.lineId(), highest, BigDecimal::min);
            }
        }
    }

    /** A formula that asks for less than the usual least does so on purpose; rounding then has no floor to keep. */
    private static Percent least(Item item) {
        double asked = item.portion().share().nominal() * 100;
        return item.material()
                .filter(card -> card.family() == Family.PRESERVATIVE)
                .flatMap(Material::usage)
                .map(PercentRange::low)
                .filter(low -> low.value().doubleValue() <= asked)
                .orElse(Percent.ZERO);
    }
}
