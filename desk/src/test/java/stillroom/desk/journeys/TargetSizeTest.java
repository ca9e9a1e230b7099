package stillroom.desk.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;

/** Whatever is pressed at the bench is large enough for a wet glove. */
@Tag("browser")
final class TargetSizeTest {
    /** A box to tick is as large as its label, which is pressed as well; a link inside a sentence is text. */
    private static final String TOO_SMALL = """
            () => {
              const target = (one) => (one.matches('[type="checkbox"], [type="radio"]') && one.closest('label')) || one;
              const inSentence = (one) => one.matches('a') && getComputedStyle(one).display === 'inline'
                && [...one.parentElement.childNodes].some((part) =>
                  part.nodeType === Node.TEXT_NODE && /[\\p{L}]{2}/u.test(part.textContent));
              return [...document.querySelectorAll('a[href], button, summary, select, textarea, input:not([type="hidden"])')]
                .filter((one) => one.checkVisibility() && !one.matches('.skip') && !inSentence(one))
                .map((one) => [one, target(one).getBoundingClientRect()])
                .filter(([, box]) => box.width < 43.9 || box.height < 43.9)
                .map(([one, box]) => `${bench.nameOf(one)}: ${box.width.toFixed(1)} x ${box.height.toFixed(1)}`);
            }""";

    private static final int FEWEST_BENCH_PAGES = 15;

    @TempDir
    private Path folder;

    @Test
    void nothingAtTheBenchIsSmallerThanAGlovedFinger() {
        try (OpenDesk desk = OpenDesk.in(folder);
                BenchBrowser browser = new BenchBrowser()) {
            assertThat(desk.post("/demonstration", Map.of()).status()).isEqualTo(303);
            List<String> bench = KindsOfPages.of(desk).stream()
                    .filter(address -> address.startsWith("/batches/"))
                    .toList();
            assertThat(bench).hasSizeGreaterThan(FEWEST_BENCH_PAGES);
            Page page = browser.tablet(desk.address());
            Sight sight = Sight.of(page);
            List<String> small = new ArrayList<>();
            for (String address : bench) {
                page.navigate(address);
                sight.calm();
                ((List<?>) page.evaluate(TOO_SMALL)).forEach(one -> small.add(address + ": " + one));
            }
            assertThat(small).isEmpty();
        }
    }
}
