package stillroom.desk.shell;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/** One entry of a list to choose from: what the form sends and what the person reads. */
public record Choice(String value, String words) {
    /** All constants of an enum in their order. */
    public static <E extends Enum<E>> List<Choice> of(Class<E> kinds, Function<E, String> words) {
        return Arrays.stream(kinds.getEnumConstants())
                .map(kind -> new Choice(kind.name(), words.apply(kind)))
                .toList();
    }
}
