package stillroom.desk.workshop;

import java.util.List;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/**
 * The form of a balance.
 *
 * @param path where the form goes
 * @param was the name under which the balance was read, empty for a new one
 * @param least weights by tolerance; empty for a new balance
 * @param check what the last check with a reference mass showed, empty for none
 * @param checking the form of a check as typed
 * @param conflict one sentence where somebody saved in the meantime, else empty
 */
public record BalancePage(
        Frame frame,
        String path,
        String was,
        Typed typed,
        String conflict,
        List<Least> least,
        String check,
        Typed checking) {
    public BalancePage {
        least = List.copyOf(least);
    }

    /** The least weight for a tolerance, put into an empty vessel and into a filled one [g], as shown. */
    public record Least(String tolerance, String empty, String filled) {}

    public boolean isNew() {
        return was.isEmpty();
    }
}
