package stillroom.desk.trials;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import stillroom.desk.shell.Desk;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.trial.TrialSet;
import stillroom.science.design.DesignAnswer;
import stillroom.science.design.DesignTask;
import stillroom.science.design.OptimalDesigns;
import stillroom.science.design.Run;

/** Turns a question into a design, and each of its runs into a version that can be planned and weighed like any other. */
public final class Making {
    /** For emergencies only: the work is counted, so that the same question has the same answer. */
    private static final double MOST_SECONDS = 30;

    private final Desk desk;

    Making(Desk desk) {
        this.desk = desk;
    }

    static DesignAnswer search(DesignTask task) {
        long begun = System.nanoTime();
        return OptimalDesigns.search(
                task, OptimalDesigns.USUAL_EFFORT, () -> System.nanoTime() - begun > MOST_SECONDS * 1e9);
    }

    /** Stores the set with a product of its own, one version per run. */
    TrialSet make(Varied varied, NewTrial.Asked asked, List<Run> runs) {
        TrialSet wanted = new TrialSet(
                "",
                asked.name(),
                new TrialSet.Base(varied.product().id(), varied.version().number()),
                0,
                asked.components(),
                asked.share(),
                asked.constraints(),
                asked.variables(),
                asked.responses(),
                new TrialSet.Chosen(
                        asked.blending().name(),
                        asked.kind().name(),
                        asked.task().wishes().blocks(),
                        asked.task().wishes().seed()),
                List.of());
        return begin(desk, wanted, runs);
    }

    /** Stores a set that is described all but for its key, its product and its runs. */
    public static TrialSet begin(Desk desk, TrialSet wanted, List<Run> runs) {
        return desk.ledger().together(() -> {
            Product base =
                    desk.ledger().products().product(wanted.base().product()).orElseThrow();
            FormulaVersion version = desk.ledger()
                    .products()
                    .version(base.id(), wanted.base().version())
                    .orElseThrow();
            Product product = desk.ledger()
                    .products()
                    .add(
                            base.name() + ", trials: " + wanted.name(),
                            base.brief(),
                            "One version per run of the trials " + wanted.name() + ".");
            TrialBook book = new TrialBook(desk);
            TrialSet empty = wanted.kept(book.freeKey(), product.id());
            Varied varied = Varied.of(desk, base, version);
            TrialSet set = empty.withRuns(new Making(desk).cards(varied, empty, runs, 0));
            book.write(set);
            return set;
        });
    }

    /** Stores further runs of a set; nothing where it was changed while they were searched for. */
    boolean extend(Varied varied, TrialSet set, List<Run> fresh) {
        return desk.ledger().together(() -> {
            TrialBook book = new TrialBook(desk);
            if (!TrialBook.mark(book.one(set.key())).equals(TrialBook.mark(set))) {
                return false;
            }
            List<TrialSet.Run> all = new ArrayList<>(set.runs());
            all.addAll(cards(varied, set, fresh, set.runs().size()));
            book.write(set.withRuns(all));
            return true;
        });
    }

    /** In the order in which they are made, each a version with the same number: run 3 is version 3. */
    private List<TrialSet.Run> cards(Varied varied, TrialSet set, List<Run> runs, int before) {
        List<TrialSet.Run> cards = new ArrayList<>();
        for (Run run : shuffled(runs, before + set.design().seed())) {
            int order = before + cards.size() + 1;
            FormulaVersion version = desk.ledger()
                    .products()
                    .newVersion(
                            set.product(),
                            Optional.empty(),
                            varied.with(percents(set, run.fractions())),
                            "Run " + order + ".",
                            desk.now());
            List<Double> settings = new ArrayList<>();
            for (int k = 0; k < set.variables().size(); k++) {
                settings.add(Region.actual(set.variables().get(k), run.process().get(k)));
            }
            cards.add(new TrialSet.Run(
                    version.number(), order, run.block(), run.fractions(), settings, Map.of(), Map.of(), ""));
        }
        return cards;
    }

    /** What each line that varies takes of the formula in a mixture. */
    static Map<String, Percent> percents(TrialSet set, List<Double> fractions) {
        Map<String, Percent> percents = new LinkedHashMap<>();
        for (int i = 0; i < set.components().size(); i++) {
            BigDecimal percent =
                    BigDecimal.valueOf(fractions.get(i) * set.share()).setScale(3, RoundingMode.HALF_EVEN);
            percents.put(set.components().get(i).lineId(), new Percent(percent.max(BigDecimal.ZERO)));
        }
        return percents;
    }

    /** Within each block, blocks one after another. */
    private static List<Run> shuffled(List<Run> runs, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Run> order = new ArrayList<>(runs);
        for (int i = order.size() - 1; i > 0; i--) {
            int first = i;
            while (first > 0 && runs.get(first - 1).block() == runs.get(i).block()) {
                first--;
            }
            Collections.swap(order, i, first + random.nextInt(i - first + 1));
        }
        return order;
    }
}
