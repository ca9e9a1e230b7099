package stillroom.ledger.json;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.concern.Concern;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.plan.BatchSize;

/**
 * The word in "kind" for each shape of a closed set: the record's name in small letters with hyphens. These words are part of
 * the file format; whoever renames a record must keep its old word here.
 */
final class Kinds {
    /** The closed sets that are told apart by a kind. */
    static final List<Class<?>> SETS = List.of(Amount.class, BatchSize.class, BatchEvent.class, Concern.class);

    private static final Map<Class<?>, String> WORDS = words();

    private Kinds() {}

    /** The word of a shape; each shape of {@link #SETS} has one. */
    static String of(Class<?> shape) {
        String word = WORDS.get(shape);
        if (word == null) {
            throw new IllegalArgumentException(shape + " belongs to no closed set of the file format");
        }
        return word;
    }

    private static Map<Class<?>, String> words() {
        Map<Class<?>, String> words = new HashMap<>();
        for (Class<?> set : SETS) {
            for (Class<?> shape : set.getPermittedSubclasses()) {
                words.put(shape, hyphenated(shape.getSimpleName()));
            }
        }
        return Map.copyOf(words);
    }

    private static String hyphenated(String name) {
        return name.replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    }
}
