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
    /** What is hard about a blend. */
    public enum Shape {
        /** Limits some ten percent to either side of the mix. */
        USUAL,
        /** Limits within a few thousandths of the mix: hardly anything else is possible. */
        TIGHT,
        /** The first two limits hold their sums at one value. */
        EQUAL,
        /** Each material stands there three times: twice the same, and once a cent dearer. */
        TWINS,
        /** Whole-numbered properties of three values and costs of four: many optima. */
        COARSE,
        /** Least doses of 3 to 10 percent. */
        HEAVY
    }

    private final Random random;
    private final Shape shape;
    private final int materials;
    private final int properties;
    private final int used;

    private GeneratedBlend(Shape shape, long seed, int materials, int properties, int used) {
        this.random = new Random(seed);
        this.shape = shape;
        this.materials = materials;
        this.properties = properties;
        this.used = used;
    }

    /** At most {@code used} materials, each absent or above its least dose. */
    public static Blend counted(long seed, int materials, int properties, int used) {
        return counted(Shape.USUAL, seed, materials, properties, used);
    }

    public static Blend counted(Shape shape, long seed, int materials, int properties, int used) {
        return new GeneratedBlend(shape, seed, materials, properties, used).blend(true);
    }

    /** Without least doses, and any number of materials. */
    public static Blend linear(long seed, int materials, int properties) {
        return linear(Shape.USUAL, seed, materials, properties);
    }

    public static Blend linear(Shape shape, long seed, int materials, int properties) {
        return new GeneratedBlend(shape, seed, materials, properties, 8).blend(false);
    }

    private Blend blend(boolean counted) {
        List<Ingredient> ingredients = new ArrayList<>();
        for (int j = 0; j < materials; j++) {
            double least = counted ? rounded(least(random.nextDouble()), 1000) : 0;
            ingredients.add(new Ingredient(
                    "m" + (j + 1),
                    least,
                    rounded(0.15 + 0.35 * random.nextDouble(), 100),
                    false,
                    Cost.perFraction(cost(random.nextDouble()))));
        }
        if (shape == Shape.TWINS) {
            twin(ingredients);
        }
        double[] mix = mix(ingredients);
        List<Limit> limits = new ArrayList<>();
        for (int i = 0; i < properties; i++) {
            limits.add(limit("p" + (i + 1), mix));
        }
        Set<Integer> all = IntStream.range(0, materials).boxed().collect(Collectors.toSet());
        return new Blend(ingredients, limits, counted ? List.of(new UseLimit("at most", all, used)) : List.of());
    }

    private double least(double drawn) {
        return shape == Shape.HEAVY ? 0.03 + 0.07 * drawn : 0.005 + 0.025 * drawn;
    }

    private double cost(double drawn) {
        return shape == Shape.COARSE ? 2 + Math.floor(4 * drawn) : rounded(1.5 + 18 * Math.pow(drawn, 1.5), 100);
    }

    private static void twin(List<Ingredient> ingredients) {
        for (int j = 0; j < ingredients.size(); j++) {
            Ingredient first = ingredients.get(j - j % 3);
            double dearer = j % 3 == 2 ? 0.01 : 0;
            Cost cost = Cost.perFraction(rounded(first.cost().perFraction() + dearer, 100));
            String name = ingredients.get(j).name();
            ingredients.set(j, new Ingredient(name, first.leastIfUsed(), first.most(), false, cost));
        }
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
            double value = random.nextDouble() < 0.5 ? 0.0 : value(random.nextDouble());
            values.add(shape == Shape.TWINS && j % 3 > 0 ? values.get(j - j % 3) : Double.valueOf(value));
        }
        double at = new Limit(name, values, 0, 1).of(mix);
        if (shape == Shape.EQUAL && (name.equals("p1") || name.equals("p2"))) {
            return new Limit(name, values, rounded(at, 10), rounded(at, 10));
        }
        double tighter = shape == Shape.TIGHT ? 0.01 : 1;
        double perUnit = shape == Shape.TIGHT ? 1e4 : 10;
        double low = Math.floor(perUnit * at * (1 - tighter * (0.25 - 0.2 * random.nextDouble()))) / perUnit;
        double high = Math.ceil(perUnit * at * (1 + tighter * (0.05 + 0.25 * random.nextDouble()))) / perUnit;
        return switch (random.nextInt(5)) {
            case 0, 1 -> Limit.atLeast(name, values, low);
            case 2, 3 -> Limit.atMost(name, values, high);
            default -> new Limit(name, values, low, high);
        };
    }

    private double value(double drawn) {
        return shape == Shape.COARSE ? 10 + 20 * Math.floor(3 * drawn) : rounded(100 * drawn, 10);
    }

    private static double rounded(double value, double perUnit) {
        return Math.round(value * perUnit) / perUnit;
    }
}
