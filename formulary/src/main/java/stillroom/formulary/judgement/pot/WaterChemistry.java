package stillroom.formulary.judgement.pot;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.constants.AcidConstants;
import stillroom.formulary.constants.PhConstants;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.material.MaterialBook;
import stillroom.science.equilibrium.Component;
import stillroom.science.equilibrium.Solution;
import stillroom.science.equilibrium.StrongIon;

/**
 * Acids, bases, strong ions and water of something made, per kilogram of it.
 *
 * <p>The same description as that of the pH to expect ({@link Acidity}), at the middle of all ranges. Soap is left out
 * with its counter-ion: as a monomer it would be wrong.
 *
 * @param components weak acids and bases [mol/kg]
 * @param ions strong ions [mol/kg]
 * @param waterFraction water, brought by materials included, less what evaporated [-]
 * @param strengthSpread half the range of the largest acid or base over its nominal amount; 0 where it is exact [-]
 * @param unknown materials without a composition
 * @param leftOut names of soaps
 */
public record WaterChemistry(
        List<Component> components,
        List<StrongIon> ions,
        double waterFraction,
        double strengthSpread,
        List<String> unknown,
        List<String> leftOut) {
    public WaterChemistry {
        components = List.copyOf(components);
        ions = List.copyOf(ions);
        unknown = List.copyOf(unknown);
        leftOut = List.copyOf(leftOut);
    }

    /** Opens a subject into what takes part in its pH. */
    public static WaterChemistry of(Subject subject, MaterialBook book, PhConstants constants) {
        Opening.Opened opened = Opening.open(subject, book);
        List<Share> shares = opened.composition().shares().stream()
                .map(share -> new Share(share, book.substance(share.substance())))
                .toList();
        List<Item> items = subject.portions().stream()
                .map(portion -> new Item(portion, book.material(portion.materialKey())))
                .toList();
        AcidConstants acids = constants.acids();
        Dissolved all = Dissolved.of(shares, acids);
        Dissolved dissolved = new Dissolved(all.parts().stream()
                .filter(part -> !part.acid().formsMicelles())
                .toList());
        // Over a water fraction of 1 the amounts come out per kilogram of the whole.
        Solution perKilogram = dissolved.solution(1, acids, part -> part.share().nominal());
        for (Gathered one : Gathered.of(items, shares, constants.gathered())) {
            perKilogram = one.middle(perKilogram, 1);
        }
        return new WaterChemistry(
                perKilogram.components(),
                perKilogram.ions(),
                Math.min(1, Pot.sum(shares.stream().filter(Share::isWater).toList())),
                spread(dissolved),
                opened.composition().unknown(),
                all.parts().stream()
                        .filter(part -> part.acid().formsMicelles())
                        .map(part -> part.share().name())
                        .distinct()
                        .toList());
    }

    private static double spread(Dissolved dissolved) {
        Optional<Share> largest = dissolved.parts().stream()
                .max(Comparator.comparingDouble(part -> part.share().nominal() / part.gramsPerMol()))
                .map(Dissolved.Part::share)
                .filter(share -> share.nominal() > 0);
        return largest.map(share -> (share.amount().upper() - share.amount().lower()) / 2 / share.nominal())
                .orElse(0.0);
    }

    /** Whether nothing in it can move a pH. */
    public boolean isInert() {
        return components.stream().allMatch(component -> component.molPerKg() == 0)
                && ions.stream().allMatch(ion -> ion.molPerKg() == 0);
    }
}
