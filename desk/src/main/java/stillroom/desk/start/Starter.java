package stillroom.desk.start;

import java.util.function.Supplier;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.StarterLibrary;

/** The starter library, read when it is first asked for. */
final class Starter {
    static final Supplier<MaterialBook> LIBRARY = StarterLibrary::load;

    private Starter() {}
}
