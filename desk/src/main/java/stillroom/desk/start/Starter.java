package stillroom.desk.start;

import java.util.function.Supplier;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.StarterLibrary;

/** The starter library, read once, when it is first asked for. */
public final class Starter {
    public static final Supplier<MaterialBook> LIBRARY = () -> Kept.BOOK;

    private Starter() {}

    private static final class Kept {
        private static final MaterialBook BOOK = StarterLibrary.load();
    }
}
