package stillroom.formulary.judgement.pot;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import stillroom.formulary.evaluation.Composition;
import stillroom.formulary.evaluation.Figures;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.rule.RuleBook;

/**
 * Everything that a check may look at: what is judged, opened into substances, its figures, and the books.
 *
 * @param items the portions with their cards, in working order
 * @param shares the composition with what is known of each substance, largest first
 * @param rows the rule rows of the product's market, of any day, that name a substance of it
 * @param loops chains of cards that contain themselves
 */
public record Pot(
        Subject subject,
        MaterialBook book,
        RuleBook rules,
        LocalDate asOf,
        List<Item> items,
        Composition composition,
        List<Share> shares,
        List<NamingRow> rows,
        List<String> loops,
        Figures figures) {
    /** Below this share of a card its water is moisture. */
    private static final double BOUND = 0.2;

    /** Materials without a composition, by the names that stand on their lines. */
    public List<String> unknownNames() {
        return Item.names(items, composition.unknown());
    }

    /** Opens the subject and computes its figures. */
    public static Pot open(Subject subject, MaterialBook book, PriceBook prices, RuleBook rules, LocalDate asOf) {
        Opening.Opened opened = Opening.open(subject, book);
        List<Item> items = subject.portions().stream()
                .map(portion -> new Item(portion, book.material(portion.materialKey())))
                .toList();
        List<Share> shares = opened.composition().shares().stream()
                .map(share -> new Share(share, book.substance(share.substance())))
                .toList();
        Figures figures = new FigureWork(subject, items, shares, opened.composition(), prices, rules).figures();
        return new Pot(
                subject,
                book,
                rules,
                asOf,
                items,
                opened.composition(),
                shares,
                NamingRow.of(subject, shares, rules),
                opened.loops(),
                figures);
    }

    /** The same pot, asked by the law of another day: nothing in it is reckoned again. */
    public Pot at(LocalDate day) {
        return new Pot(subject, book, rules, day, items, composition, shares, rows, loops, figures);
    }

    static boolean isWater(String substance) {
        return substance.equals("water") || substance.equals("aqua");
    }

    public Brief brief() {
        return subject.brief();
    }

    /** Water in the pot, nominal, 0 to 1. */
    public double waterFraction() {
        return figures.waterPercent().value() / 100;
    }

    public List<Share> where(Predicate<Share> wanted) {
        return shares.stream().filter(wanted).toList();
    }

    /**
     * Water in which something could grow, nominal, 0 to 1: without the moisture of powders, waxes and nearly
     * water-free materials, which is bound.
     */
    public double freeWaterFraction() {
        double free = 0;
        for (Item item : items) {
            double inCard = item.material().stream()
                    .flatMap(card -> card.composition().stream())
                    .filter(part ->
                            isWater(part.substance()) || part.substance().startsWith("material:"))
                    .mapToDouble(part -> part.massFraction().nominal())
                    .sum();
            free += inCard >= BOUND ? item.portion().share().nominal() * inCard : 0;
        }
        return Math.min(free, waterFraction());
    }

    /** Substances with the tag that are there on purpose. */
    public List<Share> ingredients(String tag) {
        return where(share -> share.isIngredient() && share.is(tag));
    }

    public List<Item> items(Family family) {
        return items.stream().filter(item -> item.is(family)).toList();
    }

    /** Whether every card is opened; else what seems missing may stand in an unopened one. */
    public boolean isFullyKnown() {
        return composition.unknown().isEmpty();
    }

    /** Whether a card of that shelf brings the substance. */
    public boolean broughtBy(Family family, Share share) {
        return items.stream()
                .anyMatch(item ->
                        item.is(family) && share.lines().contains(item.portion().lineId()));
    }

    public static double sum(List<Share> shares) {
        return shares.stream().mapToDouble(Share::nominal).sum();
    }

    /** The lines of all shares, each once. */
    public static List<String> lines(List<Share> shares) {
        LinkedHashSet<String> lines = new LinkedHashSet<>();
        shares.forEach(share -> lines.addAll(share.lines()));
        return new ArrayList<>(lines);
    }

    public static List<String> names(List<Share> shares) {
        return shares.stream().map(Share::name).toList();
    }

    /** The pH by which the product is judged: as read, else the band or target of the brief, else as computed. */
    public Optional<Interval> workingPh() {
        return subject.measuredPh()
                .or(() -> brief().phBand())
                .or(() -> brief().phTarget().map(Interval::point))
                .or(() -> figures.ph()
                        .match(ph -> Optional.of(new Interval(ph.low(), ph.high())), because -> Optional.empty()));
    }
}
