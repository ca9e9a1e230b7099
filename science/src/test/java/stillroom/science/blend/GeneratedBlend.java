package stillroom.science.blend;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Blends made by a seeded random generator, in the shape of a shelf: many materials, sparse properties, limits drawn around a
 * mix that exists, so that each problem can be solved, but the limits bind.
 */
public final class GeneratedBlend {
    private final Random random;
    private final int materials;
    private final int properties;
    private final int used;

    private GeneratedBlend(long seed, int materials, int properties, int used) {
        this.random = new Random(seed);
        this.materials = materials;
        this.properties = properties;
        this.used = used;
    }

    /** At most {@code used} materials, each absent or above its least dose. */
    public static Blend counted(long seed, int materials, int properties, int used) {
        return new GeneratedBlend(seed, materials, properties, used).blend(true);
    }

    /** Without least doses, and any number of materials. */
    public static Blend linear(long seed, int materials, int properties) {
        return new GeneratedBlend(seed, materials, properties, 8).blend(false);
    }

    private Blend blend(boolean counted) {
        List<Ingredient> ingredients = new ArrayList<>();
        for (int j = 0; j < materials; j++) {
            double least = counted ? rounded(0.005 + 0.025 * random.nextDouble(), 1000) : 0;
            ingredients.add(new Ingredient(
                    "m" + (j + 1),
                    least,
                    rounded(0.15 + 0.35 * random.nextDouble(), 100),
                    false,
                    Cost.perFraction(rounded(1.5 + 18 * Math.pow(random.nextDouble(), 1.5), 100))));
        }
        double[] mix = mix(ingredients);
        List<Limit> limits = new ArrayList<>();
        for (int i = 0; i < properties; i++) {
            limits.add(limit("p" + (i + 1), mix));
        }
        Set<Integer> all = IntStream.range(0, materials).boxed().collect(Collectors.toSet());
        return new Blend(ingredients, limits, counted ? List.of(new UseLimit("at most", all, used)) : List.of());
    }

    /** A mix of the wanted number of materials that keeps every bound of theirs. */
    private double[] mix(List<Ingredient> ingredients) {
        while (true) {
            List<Integer> order =
                    new ArrayList<>(IntStream.range(0, materials).boxed().toList());
            Collections.shuffle(order, random);
            double[] mix = new double[materials];
            double sum = 0;
            for (int j : order.subList(0, used)) {
                mix[j] = 0.05 + random.nextDouble();
                sum += mix[j];
            }
            boolean within = true;
            for (int j : order.subList(0, used)) {
                mix[j] /= sum;
                within &= mix[j] <= ingredients.get(j).most()
                        && mix[j] >= ingredients.get(j).leastIfUsed();
            }
            if (within) {
                return mix;
            }
        }
    }

    private Limit limit(String name, double[] mix) {
        List<Double> values = new ArrayList<>();
        for (int j = 0; j < materials; j++) {
            values.add(random.nextDouble() < 0.5 ? 0.0 : rounded(100 * random.nextDouble(), 10));
        }
        double at = new Limit(name, values, 0, 1).of(mix);
        double low = Math.floor(10 * at * (0.75 + 0.2 * random.nextDouble())) / 10;
        double high = Math.ceil(10 * at * (1.05 + 0.25 * random.nextDouble())) / 10;
        return switch (random.nextInt(5)) {
            case 0, 1 -> Limit.atLeast(name, values, low);
            case 2, 3 -> Limit.atMost(name, values, high);
            default -> new Limit(name, values, low, high);
        };
    }

    private static double rounded(double value, double perUnit) {
        return Math.round(value * perUnit) / perUnit;
    }
}
