package stillroom.ledger.store;

import java.util.function.Function;

/** What became of a save: done, or refused because the record had moved on since it was read. Nothing is overwritten then. */
public sealed interface Saved<T> {
    /** Stored, as it now stands. */
    record Done<T>(T value) implements Saved<T> {}

    /** Not stored: somebody saved in the meantime (or the version was kept); this is what stands now. */
    record Stale<T>(T current) implements Saved<T> {}

    /** One function per case. */
    default <R> R match(Function<T, R> done, Function<T, R> stale) {
        return this instanceof Done<T> d ? done.apply(d.value()) : stale.apply(((Stale<T>) this).current());
    }
}
