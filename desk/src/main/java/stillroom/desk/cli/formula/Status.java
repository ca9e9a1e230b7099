package stillroom.desk.cli.formula;

/** How a command on formula files ends; of several files the weightiest. Documented in docs/commands.md. */
enum Status {
    /** Nothing warned, everything judged. */
    CLEAN(0),
    /** Something could not be judged for want of a datum; nothing warned. */
    OPEN(5),
    /** At least one breach or probable fault; for a plan, a line that should not be worked like this. */
    WARNED(4),
    /** Some file could not be read. */
    UNREADABLE(3);

    private final int exit;

    Status(int exit) {
        this.exit = exit;
    }

    int exit() {
        return exit;
    }

    Status and(Status other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** As a JSON answer says it. */
    String word() {
        return switch (this) {
            case CLEAN -> "no-warnings";
            case OPEN -> "not-wholly-judged";
            case WARNED -> "warnings";
            case UNREADABLE -> "unreadable";
        };
    }
}
