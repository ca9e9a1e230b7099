package stillroom.desk.imports;

import stillroom.formulary.imports.Grid;
import stillroom.formulary.imports.NameIndex;
import stillroom.formulary.imports.ReadSheet;
import stillroom.formulary.imports.SheetReading;

/**
 * A sheet that is being looked at; nothing of it is stored yet.
 *
 * @param number within its upload, from 1
 * @param file name of the file it came in
 * @param grid as the file holds it
 * @param read as it is understood, with the maker's decisions
 */
public record HeldSheet(int number, String file, Grid grid, Decisions decisions, ReadSheet read) {
    public static HeldSheet of(int number, String file, Grid grid, Decisions decisions, NameIndex names) {
        return new HeldSheet(
                number, file, grid, decisions, SheetReading.read(grid, decisions.guidance(), names::knows));
    }

    HeldSheet decided(Decisions other, NameIndex names) {
        return of(number, file, grid, other, names);
    }
}
