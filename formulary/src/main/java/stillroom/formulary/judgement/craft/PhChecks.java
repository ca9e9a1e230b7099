package stillroom.formulary.judgement.craft;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Item;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Words;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.quantity.Interval;

/** The product's pH against what its materials, its brief and the skin ask. */
final class PhChecks {
    /** Outside its range a chelator binds less and a corrector corrects less; neither makes the product faulty. */
    private static final Set<Family> PERIPHERAL =
            EnumSet.of(Family.ACID, Family.BASE, Family.CHELATOR, Family.HUMECTANT, Family.SALT);

    /** A computed pH this far outside the band is a fault; nearer, what is not known of the materials may explain it. */
    private static final double CLEARLY = 1.0;
    /** Up to this share a fixed line of acid or base is a first dose. */
    private static final double SMALL_DOSE = 0.01;

    private PhChecks() {}

    private static Family family(Item item) {
        return item.material().map(Material::family).orElse(Family.OTHER);
    }

    static void materials(Pot pot, Consumer<Finding> report) {
        Optional<Interval> ph = pot.workingPh();
        if (ph.isEmpty() || pot.waterFraction() <= 0) {
            return;
        }
        // A computed interval is doubt, not a band that the product will use up: its middle stands for it at a border.
        Interval asked = isOnlyComputed(pot) ? narrowed(ph.get()) : ph.get();
        for (Item item : pot.items()) {
            item.material()
                    .flatMap(Material::workingPh)
                    .ifPresent(works -> judge(item, works, asked, ph.get(), report));
        }
    }

    private static boolean isOnlyComputed(Pot pot) {
        return pot.subject().measuredPh().isEmpty()
                && pot.brief().phBand().isEmpty()
                && pot.brief().phTarget().isEmpty();
    }

    private static Interval narrowed(Interval ph) {
        return Interval.point(ph.middle());
    }

    private static void judge(Item item, Interval works, Interval asked, Interval ph, Consumer<Finding> report) {
        if (item.portion().share().upper() == 0 || (works.contains(asked.low()) && works.contains(asked.high()))) {
            return;
        }
        boolean apart = ph.high() < works.low() || ph.low() > works.high();
        String says = apart
                ? item.name() + " works from pH " + span(works) + "; the product is at pH " + span(ph) + "."
                : item.name() + " works from pH " + span(works) + "; part of the product's pH " + span(ph)
                        + " lies outside.";
        report.accept(new Finding(
                apart && !PERIPHERAL.contains(family(item)) ? Finding.Kind.PROBABLE_FAULT : Finding.Kind.LOOK_AT_THIS,
                "ph.material",
                item.material()
                        .map(card -> card.sources().getOrDefault("workingPh", CraftChecks.PRACTICE))
                        .orElse(CraftChecks.PRACTICE),
                List.of(item.portion().lineId()),
                List.of(figure("Product", ph), figure("Works at", works)),
                says,
                apart ? "Move the product's pH, or choose another material." : "Narrow the product's pH band."));
    }

    /** The expected or read pH against the band that the brief asks for. */
    static void band(Pot pot, Consumer<Finding> report) {
        Optional<Interval> band = pot.brief().phBand();
        Optional<Figure> ph = pot.figures().ph().match(Optional::of, because -> Optional.empty());
        if (band.isEmpty() || ph.isEmpty()) {
            return;
        }
        boolean apart = ph.get().high() < band.get().low()
                || ph.get().low() > band.get().high();
        boolean read = pot.subject().measuredPh().isPresent();
        if (!apart) {
            return;
        }
        double off = Math.max(
                band.get().low() - ph.get().high(), ph.get().low() - band.get().high());
        boolean fault = read || (off > CLEARLY && !isDosedAtTheBench(pot));
        report.accept(new Finding(
                fault ? Finding.Kind.PROBABLE_FAULT : Finding.Kind.LOOK_AT_THIS,
                "ph.band",
                "the product's brief",
                List.of(),
                List.of(ph.get(), figure("Band", band.get())),
                (read ? "The pH read, " : "The pH expected, ")
                        + Words.figure(ph.get().value()) + atDose(pot, read) + ", lies outside the band "
                        + span(band.get())
                        + " that the brief asks for.",
                (ph.get().value() > band.get().high() ? "Add acid, or less base." : "Add base, or less acid.")
                        + (dosed(pot).isEmpty() ? "" : " The reading decides how much.")));
    }

    private static List<Item> dosed(Pot pot) {
        return pot.items().stream()
                .filter(item -> item.is(Family.ACID) || item.is(Family.BASE))
                .filter(item -> !item.portion().share().isExact())
                .toList();
    }

    /** A line up to a reading is reckoned at the percentage written; that is said, since the bench will change it. */
    private static String atDose(Pot pot, boolean read) {
        List<Item> dosed = dosed(pot);
        return read || dosed.isEmpty()
                ? ""
                : " with "
                        + Words.list(dosed.stream()
                                .map(item ->
                                        Words.percent(item.portion().share().nominal()) + " " + item.name())
                                .toList());
    }

    /**
     * Whether what moves the pH is there to be dosed: a line up to a reading, or a small fixed one as recipes write it.
     * Then only its amount is off, and the bench finds it.
     */
    private static boolean isDosedAtTheBench(Pot pot) {
        List<Item> correctors = pot.items().stream()
                .filter(item -> item.is(Family.ACID) || item.is(Family.BASE) || item.is(Family.CHELATOR))
                .toList();
        return correctors.stream().anyMatch(item -> !item.portion().share().isExact())
                || (!correctors.isEmpty()
                        && correctors.stream()
                                .allMatch(item -> item.portion().share().nominal() <= SMALL_DOSE));
    }

    /** Far from the skin's own pH: not forbidden, but worth a thought. */
    static void skin(Pot pot, Consumer<Finding> report) {
        Optional<Interval> ph = pot.workingPh();
        if (ph.isEmpty() || pot.waterFraction() <= 0) {
            return;
        }
        double low = pot.brief().type().leaveOn() ? 3.5 : 3.0;
        double high = pot.brief().type().leaveOn() ? 8.0 : 10.0;
        Interval asked = isOnlyComputed(pot) ? narrowed(ph.get()) : ph.get();
        if (asked.low() < low || asked.high() > high) {
            report.accept(new Finding(
                    Finding.Kind.LOOK_AT_THIS,
                    "ph.skin",
                    CraftChecks.PRACTICE,
                    List.of(),
                    List.of(figure("Product", ph.get())),
                    "pH " + span(ph.get()) + " is far from the skin's own; it can irritate.",
                    "Ask the safety assessor, or move the band."));
        }
    }

    private static Figure figure(String name, Interval ph) {
        return new Figure(name, ph.low(), ph.middle(), ph.high(), "pH", "", List.of());
    }

    static String span(Interval ph) {
        return ph.isPoint() ? Words.figure(ph.low()) : Words.figure(ph.low()) + " to " + Words.figure(ph.high());
    }
}
