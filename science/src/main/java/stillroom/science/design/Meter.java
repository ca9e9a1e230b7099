package stillroom.science.design;

import java.util.function.BooleanSupplier;

/**
 * Counts work [multiplications, about] against a limit, so that the same question gets the same answer however busy the
 * machine is. The stop is for emergencies only. Not safe for use by two threads.
 */
final class Meter {
    private final BooleanSupplier stop;
    private final long limit;
    private long spent;

    Meter(long limit, BooleanSupplier stop) {
        this.limit = limit;
        this.stop = stop;
    }

    void spend(long work) {
        spent += work;
    }

    long limit() {
        return limit;
    }

    long spent() {
        return spent;
    }

    /** True once the limit is reached or the stop was pressed. */
    boolean over() {
        return spent >= limit || stop.getAsBoolean();
    }

    /** Over when that much more was spent, or when all of it is over. */
    BooleanSupplier after(long more) {
        long mark = spent + more;
        return () -> spent >= mark || over();
    }
}
