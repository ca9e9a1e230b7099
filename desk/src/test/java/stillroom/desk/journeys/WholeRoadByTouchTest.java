package stillroom.desk.journeys;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same road on a tablet at the bench, by taps. */
@Tag("browser")
final class WholeRoadByTouchTest {
    @TempDir
    private Path folder;

    @Test
    void aFormulaBecomesALabelledRecordedBatch() {
        TwoDays.walk(folder, BenchBrowser::tablet, (Page page, Sight sight) -> new Touch(page, sight));
    }
}
