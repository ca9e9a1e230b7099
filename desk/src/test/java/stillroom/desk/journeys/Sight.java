package stillroom.desk.journeys;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.ElementHandle;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;

/** Waiting for what a page shows. */
record Sight(Page page) {
    /** Generous: the machine may be busy with other things. */
    static final double PATIENCE_MILLIS = 30_000;

    static final String NAMES = names();

    private static String names() {
        try (var script = Sight.class.getResourceAsStream("names.js")) {
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static Sight of(Page page) {
        page.setDefaultTimeout(PATIENCE_MILLIS);
        page.addInitScript(NAMES);
        return new Sight(page);
    }

    /** Until these words can be read and nothing is under way. */
    void see(String... words) {
        for (String one : words) {
            assertThat(page.locator("body")).containsText(one, shown());
        }
        calm();
    }

    void see(String selector, Pattern words) {
        assertThat(page.locator(selector).first())
                .containsText(
                        words,
                        new LocatorAssertions.ContainsTextOptions()
                                .setUseInnerText(true)
                                .setTimeout(PATIENCE_MILLIS));
        calm();
    }

    void waitFor(String selector) {
        page.waitForSelector(selector);
        calm();
    }

    void gone(Locator what) {
        assertThat(what).hasCount(0, new LocatorAssertions.HasCountOptions().setTimeout(PATIENCE_MILLIS));
        calm();
    }

    /** Presses, and where that is a link to another page waits until this one is left. */
    void leaveBy(ElementHandle control, Runnable press) {
        boolean link = (boolean) control.evaluate("""
                (control) => {
                  window.stillHere = true;
                  return control.matches('a[href]') && !control.getAttribute('href').startsWith('#');
                }""");
        press.run();
        if (link) {
            page.waitForFunction("() => !window.stillHere");
        }
    }

    /** Until the page has loaded and no part of it is being asked for or swapped. */
    void calm() {
        page.waitForFunction("""
                () => document.readyState === 'complete' && window.htmx
                  && document.documentElement.classList.contains('with-behaviour')
                  && !document.querySelector('.htmx-request, .htmx-swapping, .htmx-settling, .htmx-added')""", null, new Page.WaitForFunctionOptions().setTimeout(PATIENCE_MILLIS));
    }

    private static LocatorAssertions.ContainsTextOptions shown() {
        return new LocatorAssertions.ContainsTextOptions().setUseInnerText(true).setTimeout(PATIENCE_MILLIS);
    }
}
