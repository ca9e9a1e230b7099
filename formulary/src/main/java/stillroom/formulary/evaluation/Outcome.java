package stillroom.formulary.evaluation;

import java.util.function.Function;

/** Something that may be known, or not known for a reason that is worth telling. */
public sealed interface Outcome<T> {
    record Known<T>(T value) implements Outcome<T> {}

    record NotKnown<T>(String because) implements Outcome<T> {}

    default <R> R match(Function<T, R> known, Function<String, R> notKnown) {
        return this instanceof Known<T> k ? known.apply(k.value()) : notKnown.apply(((NotKnown<T>) this).because());
    }

    static <T> Outcome<T> known(T value) {
        return new Known<>(value);
    }

    static <T> Outcome<T> notKnown(String because) {
        return new NotKnown<>(because);
    }
}
