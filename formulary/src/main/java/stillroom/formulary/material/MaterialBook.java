package stillroom.formulary.material;

import java.util.List;
import java.util.Optional;

/** The cards and substances that a computation may look at, as of one moment: the maker's own over the starter library. */
public interface MaterialBook {
    /** The card with this key, at the revision that this book holds. */
    Optional<Material> material(String key);

    Optional<Substance> substance(String key);

    /** All cards, each key once: what a maker may choose from. */
    List<Material> materials();

    /** All substances, each key once. */
    List<Substance> substances();
}
