package stillroom.desk.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.CheckedNode;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Looks at pages as someone who cannot see them well, or has a small screen. */
final class Look {
    private static final List<String> RULES =
            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa");

    private static final int[] WIDTHS = {390, 820, 1440};

    private static final String SEND_NONSENSE = """
            () => {
              const form = [...document.querySelectorAll('main form[method="post"]')]
                .find((one) => one.querySelector('input:not([type="hidden"])'));
              const typed = 'input:not([type="hidden"], [type="checkbox"], [type="radio"]), textarea';
              for (const field of form.querySelectorAll(typed)) {
                field.value = ['decimal', 'numeric'].includes(field.inputMode) ? 'abc' : '';
              }
              form.querySelectorAll('[type="checkbox"]').forEach((box) => { box.checked = false; });
              window.stillHere = true;
              HTMLFormElement.prototype.submit.call(form);
            }""";

    private final BenchBrowser browser;
    private final Sight sight;
    private final Page page;

    private final List<String> barriers = new ArrayList<>();

    Look(BenchBrowser browser, Sight sight) {
        this.browser = browser;
        this.sight = sight;
        this.page = sight.page();
    }

    /** What was in the way, one sentence each. */
    List<String> barriers() {
        return List.copyOf(barriers);
    }

    void page(String address) {
        page.navigate(address);
        look(address);
    }

    /** A page after something was done on it. */
    void after(String address, String what, Consumer<Page> doing) {
        page.navigate(address);
        sight.calm();
        doing.accept(page);
        look(address + ", " + what);
    }

    /** A form sent with nothing in it that could be taken, and come back with a sentence beside each field. */
    void refusal(String address) {
        after(address, "refused", open -> {
            open.evaluate(SEND_NONSENSE);
            open.waitForFunction("() => !window.stillHere");
            sight.calm();
            assertThat(open.locator(".problem").count())
                    .as("sentences on " + address)
                    .isPositive();
        });
    }

    private void look(String what) {
        sight.calm();
        widths(what);
        browser.takeComplaints().forEach(said -> barriers.add(what + ": " + said));
        new AxeBuilder(page)
                .setLegacyMode(true)
                .withTags(RULES)
                .analyze()
                .getViolations()
                .forEach(rule -> report(what, rule));
        // The scan itself tries styles that the page's policy refuses; that is no complaint of the page.
        browser.takeComplaints();
    }

    private void widths(String what) {
        for (int width : WIDTHS) {
            page.setViewportSize(width, 1000);
            int over = ((Number) page.evaluate("() => document.documentElement.scrollWidth - window.innerWidth"))
                    .intValue();
            if (over > 0) {
                barriers.add(what + ": " + over + " px wider than a screen of " + width + " px");
            }
        }
    }

    private void report(String what, Rule rule) {
        for (CheckedNode node : rule.getNodes()) {
            barriers.add(what + ": " + rule.getId() + " at " + node.getTarget() + ", "
                    + node.getFailureSummary().replaceAll("\\s+", " "));
        }
    }
}
