package stillroom.ledger.trace;

import java.time.Instant;
import java.util.List;

/**
 * Where a trace begins.
 *
 * @param names codes, names or keys of that kind; for {@link Kind#TIME} none
 * @param from,until the time asked for, until excluded; only for {@link Kind#TIME}
 */
public record TraceStart(Kind kind, List<String> names, Instant from, Instant until) {
    /** What can be traced. Names of vessels, balances and persons are told apart without regard to capitals. */
    public enum Kind {
        LOT,
        BATCH,
        PACK_LOT,
        VESSEL,
        BALANCE,
        PERSON,
        SUPPLIER,
        /** By key: its lots, and the versions of formulas that ask for it. */
        MATERIAL,
        TIME
    }

    public TraceStart {
        names = List.copyOf(names);
    }

    public static TraceStart of(Kind kind, String name) {
        return new TraceStart(kind, List.of(name), Instant.EPOCH, Instant.EPOCH);
    }

    public static TraceStart materials(List<String> keys) {
        return new TraceStart(Kind.MATERIAL, keys, Instant.EPOCH, Instant.EPOCH);
    }

    public static TraceStart time(Instant from, Instant until) {
        return new TraceStart(Kind.TIME, List.of(), from, until);
    }
}
