package stillroom.ledger;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Seeded random records of any type, component by component, so that a new component is tried without being listed here. */
final class RandomRecords {
    private static final List<String> TEXTS = List.of(
            "",
            " ",
            "citric acid 50 %",
            "Müller's \"special\"",
            "line\nbreak\ttab \\ slash",
            "<script>alert('x')</script>",
            "水 \uD83E\uDDEA",
            "'; drop table lot; --",
            "null",
            "\u0000\u0001 control");

    private final Random random;
    private final Map<Class<?>, Supplier<Object>> simple = new HashMap<>();

    RandomRecords(long seed) {
        random = new Random(seed);
        simple.put(String.class, this::text);
        simple.put(int.class, () -> random.nextInt(1000));
        simple.put(Integer.class, () -> random.nextInt(1000));
        simple.put(long.class, () -> random.nextLong(1L << 50));
        simple.put(Long.class, () -> random.nextLong(1L << 50));
        simple.put(boolean.class, random::nextBoolean);
        simple.put(Boolean.class, random::nextBoolean);
        simple.put(double.class, this::figure);
        simple.put(Double.class, this::figure);
        simple.put(BigDecimal.class, this::decimal);
        simple.put(LocalDate.class, () -> LocalDate.of(2020, 1, 1).plusDays(random.nextInt(5000)));
        simple.put(
                Instant.class,
                () -> Instant.ofEpochSecond(random.nextInt(2_000_000_000), random.nextInt(1_000_000_000)));
    }

    <T> T of(Class<T> type) {
        @SuppressWarnings("unchecked")
        T value = (T) made(type);
        return value;
    }

    <T> List<T> several(Class<T> type, int count) {
        return Stream.generate(() -> of(type)).limit(count).toList();
    }

    private Object made(Type type) {
        if (type instanceof ParameterizedType generic) {
            return container(generic);
        }
        Class<?> plain = (Class<?>) type;
        if (simple.containsKey(plain)) {
            return simple.get(plain).get();
        }
        if (plain.isEnum()) {
            return oneOf(List.of(plain.getEnumConstants()));
        }
        if (!plain.isSealed() && !plain.isRecord()) {
            throw new IllegalStateException("no random " + plain + " is known");
        }
        return plain.isSealed() ? made(oneOf(List.of(plain.getPermittedSubclasses()))) : record(plain);
    }

    private Object container(ParameterizedType generic) {
        Type[] of = generic.getActualTypeArguments();
        int size = random.nextInt(4);
        if (generic.getRawType() == Optional.class) {
            return random.nextBoolean() ? Optional.of(made(of[0])) : Optional.empty();
        }
        if (generic.getRawType() == List.class) {
            return Stream.generate(() -> made(of[0])).limit(size).toList();
        }
        if (generic.getRawType() == Set.class) {
            Set<Object> set = new HashSet<>();
            Stream.generate(() -> made(of[0])).limit(size).forEach(set::add);
            return set;
        }
        Map<Object, Object> map = new HashMap<>();
        Stream.generate(() -> made(of[0])).limit(size).forEach(key -> map.put(key, made(of[1])));
        return map;
    }

    /** Tries again where the record refuses what was drawn. */
    private Object record(Class<?> type) {
        for (int attempt = 0; attempt < 5000; attempt++) {
            Object[] parts = Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getGenericType)
                    .map(this::made)
                    .toArray();
            try {
                return constructor(type).newInstance(parts);
            } catch (InvocationTargetException e) {
                if (!(e.getCause() instanceof IllegalArgumentException)) {
                    throw new IllegalStateException(e.getCause());
                }
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(e);
            }
        }
        throw new IllegalStateException("no valid " + type + " in 5000 attempts");
    }

    private static Constructor<?> constructor(Class<?> type) throws NoSuchMethodException {
        Constructor<?> constructor = type.getDeclaredConstructor(Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new));
        constructor.setAccessible(true);
        return constructor;
    }

    private String text() {
        return random.nextBoolean() ? oneOf(TEXTS) : "t" + random.nextInt(100_000);
    }

    /** Mostly within 0 to 1, where fractions are asked for; all of them finite. */
    private double figure() {
        return switch (random.nextInt(6)) {
            case 0 -> 0;
            case 1 -> 1;
            case 2 -> Math.scalb(random.nextDouble(), random.nextInt(40) - 20);
            default -> random.nextDouble();
        };
    }

    /** Up to 25 digits with up to 20 decimals: more than a double holds, and as large as the book adds up. */
    private BigDecimal decimal() {
        boolean wide = random.nextInt(4) == 0;
        int scale = wide ? 13 + random.nextInt(8) : random.nextInt(13);
        int bits = wide ? 80 : 4 + (int) (scale * 3.3);
        BigDecimal value = new BigDecimal(new BigInteger(bits, random), scale);
        return random.nextInt(5) == 0 ? value.negate() : value;
    }

    private <T> T oneOf(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }
}
