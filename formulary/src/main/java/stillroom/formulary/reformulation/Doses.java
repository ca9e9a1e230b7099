package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Portion;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.judgement.pot.Contents;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Parent;
import stillroom.formulary.quantity.PercentRange;

/**
 * What dose of another material does what one did that is dosed for its effect and not for its mass. An acid or base: as much as
 * gives the same expected pH. Anything else: the dose at the same place in its range of use, 0 to 1 between the ends. A preservative
 * that brings what another preservative of the formula brings already is none, as it would be dosed twice.
 */
final class Doses {
    private static final double PH_WITHIN = 0.02;
    private static final int MOST_STEPS = 12;
    private static final double FIRST_STEP = 1e-3;
    private static final double MIDDLE = 0.5;

    private final Recast recast;
    private final Set<String> staying;
    private final Optional<Double> ph;

    Doses(Recast recast, Set<String> without) {
        this.recast = recast;
        this.staying = preserving(recast, without);
        this.ph = replacesAcid(recast, without) ? ph(recast.formula()) : Optional.empty();
    }

    private static boolean replacesAcid(Recast recast, Set<String> without) {
        return without.stream()
                .flatMap(key -> recast.book().material(key).stream())
                .anyMatch(card -> isAcidOrBase(card.family()));
    }

    private static boolean isAcidOrBase(Family family) {
        return family == Family.ACID || family == Family.BASE;
    }

    private static Set<String> preserving(Recast recast, Set<String> without) {
        Set<String> brought = new HashSet<>();
        recast.formula().lines().stream()
                .map(line -> line.materialKey())
                .filter(key -> !without.contains(key))
                .flatMap(key -> recast.book().material(key).stream())
                .filter(card -> card.family() == Family.PRESERVATIVE)
                .forEach(card -> brought.addAll(brings(recast, card)));
        return brought;
    }

    private static Set<String> brings(Recast recast, Material card) {
        Set<String> brought = new HashSet<>();
        Contents.of(card.key(), recast.brief(), recast.book()).stream()
                .filter(share -> !share.isWater() && !share.is("humectant"))
                .forEach(share -> brought.add(countedAs(share)));
        return brought;
    }

    private static String countedAs(Share share) {
        return share.substance()
                .flatMap(known -> known.parent().map(Parent::substance))
                .orElse(share.key());
    }

    /** Empty where no dose can be told. */
    Optional<InPlace> of(Material newcomer, Material gone, double was) {
        OptionalDouble dose = isAcidOrBase(gone.family()) ? bySamePh(newcomer, gone) : byPlace(newcomer, gone, was);
        boolean twice = newcomer.family() == Family.PRESERVATIVE
                && brings(recast, newcomer).stream().anyMatch(staying::contains);
        return dose.isPresent() && !twice
                ? Optional.of(new InPlace(gone.key(), gone.name(), dose.getAsDouble()))
                : Optional.empty();
    }

    private static OptionalDouble byPlace(Material newcomer, Material gone, double was) {
        if (newcomer.usage().isEmpty()) {
            return gone.family() == Family.PRESERVATIVE ? OptionalDouble.empty() : OptionalDouble.of(was);
        }
        double place = gone.usage().map(range -> place(range, was)).orElse(MIDDLE);
        PercentRange range = newcomer.usage().orElseThrow();
        double low = range.low().massFraction();
        return OptionalDouble.of(low + place * (range.high().massFraction() - low));
    }

    private static double place(PercentRange range, double was) {
        double low = range.low().massFraction();
        double high = range.high().massFraction();
        return high > low ? Math.max(0, Math.min(1, (was - low) / (high - low))) : MIDDLE;
    }

    /** Where the pH is not known, nor is the dose. Too little to hold a pH against traces and the air is too little. */
    private OptionalDouble bySamePh(Material newcomer, Material gone) {
        if (ph.isEmpty()) {
            return OptionalDouble.empty();
        }
        double most = newcomer.usage().map(range -> range.high().massFraction()).orElse(MIDDLE);
        double low = 0;
        double high = FIRST_STEP;
        while (high < most && isTooLittle(newcomer, gone, high)) {
            low = high;
            high = Math.min(most, 2 * high);
        }
        return between(newcomer, gone, low, high);
    }

    private boolean isTooLittle(Material newcomer, Material gone, double dose) {
        double lowers = gone.family() == Family.ACID ? 1 : -1;
        return off(gone, newcomer, dose).map(off -> lowers * off > 0).orElse(true);
    }

    private OptionalDouble between(Material newcomer, Material gone, double from, double to) {
        double low = from;
        double high = to;
        for (int step = 0; step < MOST_STEPS; step++) {
            double middle = (low + high) / 2;
            Optional<Double> off = off(gone, newcomer, middle);
            if (off.isPresent() && Math.abs(off.get()) < PH_WITHIN) {
                return OptionalDouble.of(middle);
            }
            boolean tooLittle = isTooLittle(newcomer, gone, middle);
            low = tooLittle ? middle : low;
            high = tooLittle ? high : middle;
        }
        return OptionalDouble.empty();
    }

    private Optional<Double> off(Material gone, Material newcomer, double dose) {
        Subject present = Subjects.of(recast.formula(), recast.brief());
        List<Portion> portions = new ArrayList<>();
        for (Portion portion : present.portions()) {
            if (!portion.materialKey().equals(gone.key())) {
                portions.add(portion);
            }
        }
        portions.add(new Portion("in-place", "", newcomer.key(), MassFraction.exactly(dose)));
        Subject other =
                new Subject(present.brief(), portions, present.phases(), present.waterLostFraction(), Optional.empty());
        return ph(other).map(value -> value - ph.orElseThrow());
    }

    private Optional<Double> ph(Formula formula) {
        return ph(Subjects.of(formula, recast.brief()).unread());
    }

    private Optional<Double> ph(Subject subject) {
        Pot pot = recast.pot(subject);
        return pot.figures()
                .ph()
                .match(Optional::of, because -> Optional.<Figure>empty())
                .map(Figure::value);
    }
}
