package stillroom.desk.workshop;

import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/**
 * The workshop's own page.
 *
 * @param seen what the settings looked like when the page was made, to notice a stale edit
 * @param conflict one sentence where somebody saved in the meantime, else empty
 * @param begin the form that sets a demonstration aside
 * @param backupFolder where copies go
 */
public record WorkshopPage(
        Frame frame,
        Typed typed,
        String seen,
        String conflict,
        List<Choice> markets,
        List<BalanceRow> balances,
        Typed begin,
        String dataFile,
        String backupFolder,
        List<Copy> copies) {
    /**
     * One balance.
     *
     * @param position 1, 2, 3 ... in the maker's order
     */
    public record BalanceRow(int position, String name, String step, String maximum, String repeatability) {}

    /** One copy of the data. */
    public record Copy(String name, String when, String how, String size) {}
}
