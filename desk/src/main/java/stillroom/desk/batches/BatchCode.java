package stillroom.desk.batches;

import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Input;

/** The code that stands on every container of a batch. */
public final class BatchCode {
    private static final int LONGEST = 40;

    private BatchCode() {}

    public static String proposed(Desk desk) {
        return desk.ledger().batches().proposeCode(desk.today());
    }

    /** Reads the field {@code code}; what cannot be printed or found again is refused. */
    public static String read(Input input) {
        String code = input.required("code", "The batch code");
        if (code.length() > LONGEST || !code.matches("[\\p{L}\\p{N} ._/#+-]*")) {
            input.refuse(
                    "code",
                    "A batch code has up to " + LONGEST
                            + " letters, digits, blanks or one of . _ / # + -, as it is printed on containers.");
        }
        return code;
    }

    public static String taken(String code) {
        return "The code " + code + " is taken by another batch; choose a different one.";
    }
}
