package stillroom.science.blend;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** A blend with only some of its requirements kept, and no costs: for asking whether any blend exists. */
final class Relaxed {
    private Relaxed() {}

    static List<Requirement> requirements(Blend blend) {
        List<Requirement> all = new ArrayList<>();
        for (Requirement.Kind kind : Requirement.Kind.values()) {
            IntStream.range(0, count(kind, blend))
                    .filter(of -> demands(kind, of, blend))
                    .forEach(of -> all.add(new Requirement(kind, of)));
        }
        return all;
    }

    private static int count(Requirement.Kind kind, Blend blend) {
        return switch (kind) {
            case LEAST_DOSE, PRESENCE, MOST -> blend.size();
            case USE_LIMIT -> blend.useLimits().size();
            case LIMIT_MIN, LIMIT_MAX -> blend.limits().size();
        };
    }

    private static boolean demands(Requirement.Kind kind, int of, Blend blend) {
        return switch (kind) {
            case LEAST_DOSE -> blend.ingredients().get(of).leastIfUsed() > 0;
            case PRESENCE -> blend.ingredients().get(of).required();
            case MOST -> blend.ingredients().get(of).most() < 1;
            case USE_LIMIT -> true;
            case LIMIT_MIN -> !Double.isInfinite(blend.limits().get(of).min());
            case LIMIT_MAX -> !Double.isInfinite(blend.limits().get(of).max());
        };
    }

    static Blend keeping(Blend blend, Set<Requirement> kept) {
        List<Ingredient> ingredients = new ArrayList<>();
        for (int j = 0; j < blend.size(); j++) {
            ingredients.add(ingredient(blend, j, kept));
        }
        List<Limit> limits = new ArrayList<>();
        for (int i = 0; i < blend.limits().size(); i++) {
            Limit limit = blend.limits().get(i);
            double min = has(kept, Requirement.Kind.LIMIT_MIN, i) ? limit.min() : Double.NEGATIVE_INFINITY;
            double max = has(kept, Requirement.Kind.LIMIT_MAX, i) ? limit.max() : Double.POSITIVE_INFINITY;
            limits.add(new Limit(limit.name(), limit.values(), min, max));
        }
        List<UseLimit> uses = IntStream.range(0, blend.useLimits().size())
                .filter(g -> has(kept, Requirement.Kind.USE_LIMIT, g))
                .mapToObj(blend.useLimits()::get)
                .toList();
        return new Blend(ingredients, limits, uses, blend.beside());
    }

    private static Ingredient ingredient(Blend blend, int j, Set<Requirement> kept) {
        Ingredient whole = blend.ingredients().get(j);
        double most = has(kept, Requirement.Kind.MOST, j) ? whole.most() : 1;
        double least = has(kept, Requirement.Kind.LEAST_DOSE, j) ? Math.min(most, whole.leastIfUsed()) : 0;
        boolean required = whole.required() && has(kept, Requirement.Kind.PRESENCE, j);
        return new Ingredient(whole.name(), least, most, required, Cost.NONE);
    }

    private static boolean has(Set<Requirement> kept, Requirement.Kind kind, int of) {
        return kept.contains(new Requirement(kind, of));
    }
}
