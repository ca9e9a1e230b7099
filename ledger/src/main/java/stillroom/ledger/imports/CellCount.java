package stillroom.ledger.imports;

/** Counts the filled cells of a file, and stops where there are too many. Not thread-safe. */
final class CellCount {
    private int cells;

    void one() {
        cells++;
        if (cells > Bounds.CELLS) {
            throw new UnreadableSheet("holds more than " + Bounds.CELLS + " cells, which no recipe does.");
        }
    }
}
