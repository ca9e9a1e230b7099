package stillroom.ledger.imports;

/** How large a sheet may be. Recipes are far smaller; what is larger is no recipe, or is meant to do harm. */
public final class Bounds {
    /** Largest file [bytes]. */
    public static final int FILE_BYTES = 10_000_000;

    /** Most that a packed file may hold when unpacked [bytes]. */
    static final long UNPACKED_BYTES = 60_000_000;

    /** Most entries in a packed file. */
    static final int ENTRIES = 2_000;

    static final int ROWS = 20_000;
    static final int COLUMNS = 400;
    static final int SHEETS = 100;

    /** Most cells that hold anything, over all sheets of a file. */
    static final int CELLS = 400_000;

    /** Longest text of a cell; a longer one is no name and is cut. */
    static final int CELL_CHARACTERS = 2_000;

    private Bounds() {}
}
