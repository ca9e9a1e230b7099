package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.SubstanceShare;
import stillroom.formulary.judgement.pot.Contents;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.science.blend.BlendAnswer;
import stillroom.science.blend.Patience;

/** Where the shelf has no answer: which one material of the library, bought, gives one, each judged by the same problem. */
final class Buying {
    private static final int MOST = 5;
    private static final double PLENTY_GRAMS = 1e9;

    private final Recast recast;
    private final Shelf shelf;
    private final Wish wish;
    private final Judging judging;
    private final Patience patience;
    private final List<Material> gone;

    Buying(Recast recast, Shelf shelf, Wish wish, Judging judging, Patience patience) {
        this.recast = recast;
        this.shelf = shelf;
        this.wish = wish;
        this.judging = judging;
        this.patience = patience;
        this.gone = wish.without().stream()
                .sorted()
                .flatMap(key -> recast.book().material(key).stream())
                .toList();
    }

    /** @param unjudged nearest by class and strength, where there was no time to judge all */
    record Found(List<Bought> works, List<Material> unjudged) {}

    /** The least change first, behind it what the evaluation likes less; with more ingredients where so few will not do. */
    Found search() {
        Found found = judgeAll();
        boolean tooFew = found.works().isEmpty() && found.unjudged().isEmpty();
        return tooFew && wish.atMost().isPresent()
                ? new Buying(recast, shelf, wish.atMost(OptionalInt.empty()), judging, patience).judgeAll()
                : found;
    }

    private Found judgeAll() {
        List<Material> cards = cards();
        List<Bought> works = new ArrayList<>();
        int judged = 0;
        for (boolean inTime = true; inTime && judged < cards.size(); ) {
            inTime = judge(cards.get(judged), works);
            judged += inTime ? 1 : 0;
        }
        List<Bought> best = works.stream()
                .sorted(Comparator.comparing((Bought one) -> one.answer().isSetBehind())
                        .thenComparingDouble(one -> one.changePercent()))
                .limit(MOST)
                .toList();
        return new Found(
                best,
                cards.subList(judged, cards.size()).stream()
                        .limit(MOST - best.size())
                        .toList());
    }

    /** Of the shelves of what is gone, the nearest first. */
    private List<Material> cards() {
        Set<Family> families = gone.stream().map(Material::family).collect(Collectors.toSet());
        Set<String> lines = recast.formula().lines().stream()
                .map(line -> line.materialKey())
                .collect(Collectors.toSet());
        return recast.book().materials().stream()
                .filter(card -> families.contains(card.family()) && !lines.contains(card.key()))
                .filter(card -> !wish.without().contains(card.key()) && isShort(card.key()))
                .sorted(Comparator.<Material>comparingDouble(this::distance).thenComparing(Material::name))
                .toList();
    }

    /** There is none, or too little for the batch. */
    private boolean isShort(String key) {
        return !shelf.onHand().containsKey(key) || shelf.most(key) < 1;
    }

    private double distance(Material card) {
        return gone.stream()
                .filter(one -> one.family() == card.family())
                .mapToDouble(one -> distance(contents(one), contents(card)))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** How far the active matter of each class is apart [g in 1 g]. */
    private static double distance(List<Share> one, List<Share> other) {
        return Arrays.stream(ChargeClass.values())
                .mapToDouble(charge -> Math.abs(active(one, charge) - active(other, charge)))
                .sum();
    }

    private static double active(List<Share> contents, ChargeClass charge) {
        return Pot.sum(
                contents.stream().filter(share -> share.isSurfactant(charge)).toList());
    }

    private List<Share> contents(Material card) {
        return Contents.of(card.key(), recast.brief(), recast.book());
    }

    /** False where time was over. */
    private boolean judge(Material card, List<Bought> works) {
        boolean priced = recast.prices().price(card.key()).isPresent();
        Problem problem = Problem.of(recast, shelf.with(card.key(), PLENTY_GRAMS), wish(priced));
        AgainstOils.Solved solved = AgainstOils.solve(problem, patience);
        solved.answer().mix().ifPresent(mix -> {
            boolean proven = solved.answer() instanceof BlendAnswer.Optimal;
            Answer answer = judging.answer(problem, mix, 0, proven, List.of());
            double percent = answer.changes().stream()
                    .filter(change -> change.materialKey().equals(card.key()))
                    .mapToDouble(Answer.Change::after)
                    .sum();
            if (percent > 0 && answer.breaches().isEmpty()) {
                works.add(new Bought(card, percent, priced, change(answer), answer));
            }
        });
        return !(solved.answer() instanceof BlendAnswer.Stopped);
    }

    /** By substance, so that the same one in another strength is no change but for its water. */
    private double change(Answer answer) {
        Map<String, Double> by = new HashMap<>();
        shares(answer.evaluation())
                .forEach(share -> by.merge(share.substance(), share.inThePot().nominal(), Double::sum));
        shares(judging.before())
                .forEach(share -> by.merge(share.substance(), -share.inThePot().nominal(), Double::sum));
        return 100 * by.values().stream().mapToDouble(Math::abs).sum();
    }

    private static List<SubstanceShare> shares(Evaluation evaluation) {
        return evaluation.composition().shares();
    }

    /** The least change; of a material without a price no cost can be asked. */
    private Wish wish(boolean priced) {
        Wish near = wish.with(Goal.LEAST_CHANGE, 1);
        return priced ? near : near.with(near.bands().withoutCost());
    }
}
