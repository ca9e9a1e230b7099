package stillroom.formulary.batch;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;

/** Decides what a loss on weighing back was: water, or one cannot tell. */
public final class Evaporation {
    /** INCI names of what leaves a warm open vessel beside water. Common practice, no source. */
    private static final Set<String> VOLATILE_INCI = Set.of(
            "alcohol",
            "alcohol denat.",
            "isopropyl alcohol",
            "acetone",
            "ethyl acetate",
            "cyclopentasiloxane",
            "isododecane");

    private final MaterialBook book;

    public Evaporation(MaterialBook book) {
        this.book = book;
    }

    public Evaporated of(Mixture product) {
        if (product.lost().signum() <= 0) {
            return new Evaporated(product.lost(), true, "");
        }
        List<String> keys = product.contents().stream()
                .filter(content -> content.mass().signum() > 0)
                .map(Content::materialKey)
                .distinct()
                .toList();
        Optional<String> other =
                keys.stream().filter(this::isVolatile).map(this::name).findFirst();
        if (other.isPresent()) {
            return new Evaporated(product.lost(), false, "Not counted as water: " + other.get() + " is volatile too.");
        }
        Optional<String> unknown =
                keys.stream().filter(this::isUnknown).map(this::name).findFirst();
        if (unknown.isPresent()) {
            return new Evaporated(
                    product.lost(), false, "Not counted as water: what " + unknown.get() + " holds is not known.");
        }
        return keys.stream().anyMatch(this::bringsWater)
                ? new Evaporated(product.lost(), true, "Counted as water: nothing else volatile is in.")
                : new Evaporated(product.lost(), false, "Not counted as water: no material is known to bring any.");
    }

    /** Water may stand without a composition; anything else without one may be volatile. */
    private boolean isUnknown(String key) {
        return book.material(key)
                .filter(card ->
                        card.family() == Family.WATER || !card.composition().isEmpty())
                .isEmpty();
    }

    private boolean isVolatile(String key) {
        return book.material(key)
                .filter(card -> card.family() == Family.FRAGRANCE
                        || card.composition().stream().anyMatch(this::isVolatile))
                .isPresent();
    }

    private boolean isVolatile(Constituent constituent) {
        return book.substance(constituent.substance())
                .filter(one -> one.is("volatile")
                        || VOLATILE_INCI.contains(one.inciName().toLowerCase(Locale.ROOT)))
                .isPresent();
    }

    private boolean bringsWater(String key) {
        return book.material(key)
                .filter(card -> card.family() == Family.WATER
                        || card.composition().stream()
                                .anyMatch(c -> c.substance().equals("water")))
                .isPresent();
    }

    private String name(String key) {
        return book.material(key).map(Material::name).orElse(key);
    }
}
