package stillroom.desk.workshop;

import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/**
 * The form of a balance.
 *
 * @param path where the form goes
 * @param was the name under which the balance was read, empty for a new one
 * @param conflict one sentence where somebody saved in the meantime, else empty
 */
public record BalancePage(Frame frame, String path, String was, Typed typed, String conflict) {
    public boolean isNew() {
        return was.isEmpty();
    }
}
