package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import stillroom.formulary.evaluation.Portion;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Line;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.judgement.pot.Contents;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.surface.SurfaceWork;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.Material;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.Price;

/**
 * Who may stand in the new formula. Free to move are the shelves on which one material may take another's place by its figures
 * (surfactants, humectants, oils ...); preservatives, acids, thickeners, actives and perfume stay as they are. Where one of these is to
 * be replaced, one other of its shelf stands in for it, at the dose that does the same; the rest of the shelf stays.
 */
final class Candidates {
    private static final Set<Family> FREE = EnumSet.of(
            Family.WATER,
            Family.SURFACTANT,
            Family.HUMECTANT,
            Family.OIL,
            Family.BUTTER,
            Family.WAX,
            Family.EMULSIFIER,
            Family.SOLVENT);

    private static final Interval NEUTRAL = Interval.point(7);

    private final Recast recast;
    private final Shelf shelf;
    private final Wish wish;
    private final Present present;
    private final List<Material> replaced;
    private final Doses doses;

    private Candidates(Recast recast, Present present, Shelf shelf, Wish wish) {
        this.recast = recast;
        this.present = present;
        this.shelf = shelf;
        this.wish = wish;
        this.replaced = new TreeSet<>(wish.without())
                .stream()
                        .flatMap(key -> recast.book().material(key).stream())
                        .filter(card -> !FREE.contains(card.family()) && isLine(card))
                        .toList();
        this.doses = new Doses(recast, wish.without());
    }

    /** One may take another's place by its figures. */
    static boolean isFree(Family family) {
        return FREE.contains(family);
    }

    /** @throws IllegalArgumentException where a line has no card, as nothing can be said of it */
    static List<Candidate> of(Recast recast, Present present, Shelf shelf, Wish wish) {
        Candidates search = new Candidates(recast, present, shelf, wish);
        List<Candidate> all = new ArrayList<>(search.lines());
        all.addAll(search.newcomers(all));
        return List.copyOf(all);
    }

    private List<Candidate> lines() {
        Subject subject = Subjects.of(recast.formula(), recast.brief());
        Map<String, Double> shares = subject.portions().stream()
                .collect(Collectors.toMap(
                        Portion::lineId, portion -> portion.share().nominal()));
        List<Candidate> lines = new ArrayList<>();
        for (Line line : recast.formula().lines()) {
            Material card = recast.book()
                    .material(line.materialKey())
                    .orElseThrow(() -> new IllegalArgumentException("No card is named \"" + line.materialKey()
                            + "\"; nothing can be computed with that line."));
            boolean goes = wish.without().contains(line.materialKey());
            boolean moves = goes || wish.allowed().containsKey(card.key());
            boolean fixed = !moves && (line.amount() instanceof Amount.ToReading || !isFree(card.family()));
            lines.add(candidate(card, Optional.of(line), shares.getOrDefault(line.id(), 0.0), fixed, Optional.empty()));
        }
        return lines;
    }

    /** Shelves that the formula already uses, and materials that are to be used up. */
    private List<Candidate> newcomers(List<Candidate> lines) {
        Set<Family> used = lines.stream().map(line -> line.card().family()).collect(Collectors.toSet());
        Set<String> there = lines.stream().map(Candidate::key).collect(Collectors.toSet());
        return new TreeSet<>(shelf.onHand().keySet())
                .stream()
                        .filter(key -> !there.contains(key) && !wish.without().contains(key))
                        .flatMap(key -> recast.book().material(key).stream())
                        .filter(card -> !card.composition().isEmpty())
                        .flatMap(card -> newcomer(card, lines, used.contains(card.family())).stream())
                        .filter(this::serves)
                        .toList();
    }

    /** Once for each line that it may stand in for, of which it takes one place only. */
    private List<Candidate> newcomer(Material card, List<Candidate> lines, boolean isUsed) {
        List<Candidate> standIns = replaced.stream()
                .filter(gone -> gone.family() == card.family())
                .flatMap(gone -> doses.of(card, gone, share(gone, lines)).stream())
                .map(place -> candidate(card, Optional.empty(), 0, false, Optional.of(place)))
                .toList();
        boolean free = isFree(card.family()) && isUsed && (card.family() != Family.WATER || goesWater(lines));
        boolean asItself = free || wish.useUp().contains(card.key());
        return standIns.isEmpty() && asItself
                ? List.of(candidate(card, Optional.empty(), 0, false, Optional.empty()))
                : standIns;
    }

    /** Flower waters and juices stand in for water only where that is to go. */
    private boolean goesWater(List<Candidate> lines) {
        return lines.stream()
                .anyMatch(line ->
                        line.card().family() == Family.WATER && wish.without().contains(line.key()));
    }

    private static double share(Material gone, List<Candidate> lines) {
        return lines.stream()
                .filter(line -> line.key().equals(gone.key()))
                .mapToDouble(Candidate::now)
                .sum();
    }

    /** What would be unknown of the new formula although it is known of this one, and is to be kept, bars a newcomer. */
    private boolean serves(Candidate newcomer) {
        boolean charged = newcomer.charge().isPresent() || present.charge().isEmpty();
        boolean between = newcomer.hasHlb() || present.hlb().isEmpty();
        boolean oils = newcomer.hasRequiredHlb() || present.requiredHlb().isEmpty();
        return charged && between && oils && isCounted(newcomer);
    }

    private boolean isCounted(Candidate newcomer) {
        return newcomer.costPer100g().isPresent() || !asksCost();
    }

    private boolean asksCost() {
        return wish.goal().asksCost() || wish.bands().cost().isPresent();
    }

    private Candidate candidate(
            Material card, Optional<Line> line, double now, boolean fixed, Optional<InPlace> place) {
        OptionalDouble cost =
                recast.prices().price(card.key()).map(Candidates::per100g).orElse(OptionalDouble.empty());
        return new Candidate(
                card,
                line,
                now,
                fixed,
                Contents.of(card.key(), recast.brief(), recast.book()),
                cost,
                charge(card),
                place);
    }

    private OptionalDouble charge(Material card) {
        Subject alone = new Subject(
                recast.brief(),
                List.of(new Portion("alone", "", card.key(), MassFraction.exactly(1))),
                List.of(),
                0,
                // Spares the reckoning of a pH that is not asked for.
                Optional.of(present.ph().orElse(NEUTRAL)));
        Pot pot = recast.pot(alone);
        // What a soap below its pH still carries is anybody's guess: no newcomer is counted on for that.
        if (present.ph().map(ph -> SurfaceWork.losesSoap(pot, ph)).orElse(false) && !isLine(card)) {
            return OptionalDouble.empty();
        }
        return SurfaceWork.charge(pot, present.ph())
                .match(known -> OptionalDouble.of(known.middle()), because -> OptionalDouble.empty());
    }

    private boolean isLine(Material card) {
        return recast.formula().lines().stream()
                .anyMatch(line -> line.materialKey().equals(card.key()));
    }

    private static OptionalDouble per100g(Price price) {
        return OptionalDouble.of(
                100 * price.paid().value().doubleValue() / price.amount().doubleValue());
    }
}
