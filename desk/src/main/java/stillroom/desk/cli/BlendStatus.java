package stillroom.desk.cli;

/** The exit status of a run of blends: the most serious of what happened. */
final class BlendStatus {
    private static final int IMPOSSIBLE = 4;
    private static final int STOPPED = 5;

    private boolean unreadable;
    private boolean impossible;
    private boolean stopped;

    void unreadable() {
        unreadable = true;
    }

    void impossible() {
        impossible = true;
    }

    void stopped() {
        stopped = true;
    }

    int exit() {
        return unreadable ? JsonLines.SOME_UNREADABLE : stopped ? STOPPED : impossible ? IMPOSSIBLE : 0;
    }
}
