package stillroom.formulary.material;

import java.util.List;
import java.util.Optional;

/**
 * What was measured of one lot; it goes before the card's nominal figures in a batch made with that lot.
 *
 * @param strength with its basis; compared with the card's only where the basis is the same
 * @param ownPh pH of the lot, or of its stated dilution
 * @param densityGramsPerMillilitre at about 20 degrees Celsius
 * @param composition where it is known as a whole, such as of a premix made here; else empty
 * @param document where it stands: number and date of the certificate
 */
public record Certificate(
        Optional<Strength> strength,
        Optional<Double> ownPh,
        Optional<Double> densityGramsPerMillilitre,
        List<Constituent> composition,
        String document) {
    public Certificate {
        composition = List.copyOf(composition);
    }

    /** Whether nothing is stated at all. */
    public boolean isBlank() {
        return strength.isEmpty()
                && ownPh.isEmpty()
                && densityGramsPerMillilitre.isEmpty()
                && composition.isEmpty()
                && document.isBlank();
    }
}
