package stillroom.formulary.rule;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.ProductType;

/**
 * Which products, people and uses of a substance a rule row speaks of.
 *
 * @param products the product types covered
 * @param onlyFor people of whom one must be meant for the row to speak; none: all
 * @param notFor people for whom the product may not contain it
 * @param purpose whether the row speaks of the substance as preservative only, or of any use
 */
public record Scope(Set<ProductType> products, Set<Brief.People> onlyFor, Set<Brief.People> notFor, Purpose purpose) {
    /** What the substance is in the product for; the card's family and the part it plays there decide. */
    public enum Purpose {
        ANY,
        /** Only where a card of the preservative shelf brings it. */
        PRESERVATIVE,
        /** Only where a card of another shelf brings it. */
        OTHER,
        /** Only where it is added as such, not as part of an essential oil nor as an impurity. */
        ADDED,
        /** Only where a card of another shelf than that of the colourants brings it. */
        NOT_AS_COLOURANT
    }

    public Scope {
        products = Set.copyOf(products);
        onlyFor = Set.copyOf(onlyFor);
        notFor = Set.copyOf(notFor);
    }

    public boolean covers(ProductType type) {
        return products.contains(type);
    }

    /** Whether the row speaks of products for these people. */
    public boolean speaksOf(Set<Brief.People> people) {
        return onlyFor.isEmpty() || onlyFor.stream().anyMatch(people::contains);
    }

    /**
     * Reads a product condition: {@code any}, {@code leave-on}, {@code rinse-off} or the name of a product type such as
     * {@code lip-product}; a word with {@code !} before it takes that type out again. No word means any.
     */
    static Set<ProductType> productsOf(List<String> words) {
        EnumSet<ProductType> covered = EnumSet.noneOf(ProductType.class);
        EnumSet<ProductType> excluded = EnumSet.noneOf(ProductType.class);
        for (String word : words) {
            if (word.startsWith("!")) {
                excluded.addAll(named(word.substring(1)));
            } else {
                covered.addAll(named(word));
            }
        }
        if (covered.isEmpty()) {
            covered.addAll(EnumSet.allOf(ProductType.class));
        }
        covered.removeAll(excluded);
        return covered;
    }

    private static Set<ProductType> named(String word) {
        EnumSet<ProductType> types = EnumSet.allOf(ProductType.class);
        switch (word) {
            case "any" -> {}
            case "leave-on" -> types.removeIf(type -> !type.leaveOn());
            case "rinse-off" -> types.removeIf(ProductType::leaveOn);
            default ->
                types.retainAll(
                        Set.of(ProductType.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'))));
        }
        return types;
    }
}
