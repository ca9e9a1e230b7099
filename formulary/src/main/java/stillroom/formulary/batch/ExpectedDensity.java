package stillroom.formulary.batch;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.material.Certificate;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;

/**
 * What a batch should weigh per volume by the densities of what is in it: each lot by its certificate, else by its card,
 * volumes added up. Air is not counted, and mixtures may shrink by a few percent; a density that was read as filled goes
 * before it.
 */
public final class ExpectedDensity {
    private ExpectedDensity() {}

    /**
     * None where nothing is in, or where the density of anything that is in is not known [g/ml].
     *
     * @param lots all lots that may have been used
     */
    public static Optional<Double> of(List<MadeLot> made, MaterialBook book, List<Lot> lots) {
        double grams = 0;
        double millilitres = 0;
        for (MadeLot one : made) {
            double mass = one.inProduct().doubleValue();
            if (mass <= 0) {
                continue;
            }
            Optional<Double> density = density(one, book, lots);
            if (density.isEmpty()) {
                return Optional.empty();
            }
            grams += mass;
            millilitres += mass / density.get();
        }
        return grams > 0 ? Optional.of(grams / millilitres) : Optional.empty();
    }

    private static Optional<Double> density(MadeLot made, MaterialBook book, List<Lot> lots) {
        return made.lot()
                .flatMap(code ->
                        lots.stream().filter(lot -> lot.code().equals(code)).findFirst())
                .flatMap(Lot::certificate)
                .flatMap(Certificate::densityGramsPerMillilitre)
                .or(() -> book.material(made.materialKey()).flatMap(Material::densityGramsPerMillilitre))
                .filter(density -> density > 0);
    }
}
