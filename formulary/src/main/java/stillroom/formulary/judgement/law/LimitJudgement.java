package stillroom.formulary.judgement.law;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Item;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.judgement.pot.Words;
import stillroom.formulary.rule.Limit;
import stillroom.formulary.rule.Rule;

/**
 * A row's figure against what the product holds, decided on the range: a line added up to a reading counts at its upper
 * end; where only the range of a data sheet crosses the figure, the lot's certificate decides.
 */
final class LimitJudgement {
    /** Dust of binary arithmetic, so that exactly the limit is within it. */
    private static final double DUST = 1e-9;

    private LimitJudgement() {}

    static List<Finding> judge(Applying applying, Pot pot) {
        Limit limit = applying.rule().limit();
        if (limit.percent().isEmpty()) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        if (limit.counting() == Limit.Counting.SUM) {
            judge(applying, applying.shares(), pot).ifPresent(findings::add);
        } else {
            applying.shares()
                    .forEach(share -> judge(applying, List.of(share), pot).ifPresent(findings::add));
        }
        return findings;
    }

    private static Optional<Finding> judge(Applying applying, List<Share> shares, Pot pot) {
        Rule rule = applying.rule();
        Counted counted = Counted.of(shares, rule.limit(), pot.book());
        double limit = rule.limit().percent().orElseThrow();
        double room = limit * (1 + DUST);
        if (counted.percentHigh() <= room) {
            return Optional.empty();
        }
        if (!counted.uncertainOf().isEmpty()
                && counted.known(rule.limit(), pot.book()).percentHigh() <= room) {
            return Optional.of(RowFinding.unknownContent(applying, counted, figures(counted, limit)));
        }
        boolean certain = counted.percent() > room || isUpToReading(counted, pot);
        Finding.Kind kind = certain ? Finding.Kind.BREACH : Finding.Kind.PROBABLE_FAULT;
        return Optional.of(RowFinding.of(
                kind,
                rule,
                counted.lines(),
                figures(counted, limit),
                says(applying, counted, limit),
                mend(counted, limit, pot)));
    }

    /** Whether the range comes from a line that is added up to a reading. */
    private static boolean isUpToReading(Counted counted, Pot pot) {
        Set<String> lines = Set.copyOf(counted.lines());
        return pot.items().stream()
                .filter(item -> lines.contains(item.portion().lineId()))
                .anyMatch(item -> !item.portion().share().isExact());
    }

    private static List<Figure> figures(Counted counted, double limit) {
        return List.of(
                new Figure(
                        "In the product",
                        counted.percentLow(),
                        counted.percent(),
                        counted.percentHigh(),
                        "%",
                        "in the pot, counted as the row counts",
                        List.of()),
                Figure.exactly("Highest allowed", limit, "%", "the row's figure"));
    }

    private static String says(Applying applying, Counted counted, double limit) {
        String as = applying.rule().limit().expressedAs();
        String expressed = as.isEmpty() ? "" : ", counted as " + words(as);
        String range = counted.percent() > limit
                ? Words.figure(counted.percent()) + " %"
                : "up to " + Words.figure(counted.percentHigh()) + " % (nominal " + Words.figure(counted.percent())
                        + " %; the upper end of the range decides)";
        String reserve = counted.uncertainOf().isEmpty()
                ? ""
                : " " + Words.list(counted.uncertainOf()) + " is counted in full: its content is not known.";
        return Words.list(Pot.names(counted.shares())) + " at " + range + expressed + "; "
                + applying.rule().name() + " may be at most " + Words.figure(limit) + " %." + reserve;
    }

    static String words(String expressedAs) {
        return expressedAs.replace("ion:", "").replace("element:", "").replace('-', ' ');
    }

    /** For a single line the arithmetic is done; else which direction. */
    private static String mend(Counted counted, double limit, Pot pot) {
        if (counted.lines().size() == 1) {
            for (Item item : pot.items()) {
                if (item.portion().lineId().equals(counted.lines().get(0))) {
                    double most = item.portion().share().upper() * 100 * limit / counted.percentHigh();
                    return "At most " + Words.figure(most) + " % of " + item.name() + ".";
                }
            }
        }
        return "Lower these lines until they make at most " + Words.figure(limit) + " % together.";
    }
}
