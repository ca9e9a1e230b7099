package stillroom.desk.journeys;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From an empty workshop to a released batch without a pointing device. */
@Tag("browser")
final class WholeRoadByKeyboardTest {
    @TempDir
    private Path folder;

    @Test
    void aFormulaBecomesALabelledRecordedBatch() {
        TwoDays.walk(folder, BenchBrowser::desktop, (Page page, Sight sight) -> new Keyboard(page, sight));
    }
}
