package stillroom.desk.journeys;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A real headless Chromium, with what its pages complained about. */
public final class BenchBrowser implements AutoCloseable {
    private static final List<String> QUIET = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    /** A form sent back for a mend, or a page that is meant not to be there; the browser reports these as errors. */
    private static final Pattern REFUSED = Pattern.compile("responded with a status of (404|409|422) ");

    private final Playwright playwright =
            Playwright.create(new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    private final Browser browser = playwright
            .chromium()
            .launch(new BrowserType.LaunchOptions().setExecutablePath(program()).setArgs(QUIET));
    private final List<String> complaints = new ArrayList<>();

    /** The system's Chromium; {@code ./check} installs it where it is missing. */
    private static Path program() {
        return Stream.of(
                        Optional.ofNullable(System.getenv("STILLROOM_BROWSER")).orElse(""),
                        "/usr/bin/chromium",
                        "/usr/bin/chromium-browser",
                        "/usr/bin/google-chrome")
                .filter(path -> !path.isBlank())
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(
                        "the browser tests need Chromium; install it with the system's package manager"));
    }

    /** A page on a desk: mouse and keyboard. */
    Page desktop(String address) {
        return page(new Browser.NewContextOptions().setViewportSize(1440, 900).setBaseURL(address));
    }

    /** A page on a tablet: touch, no mouse. */
    Page tablet(String address) {
        return page(new Browser.NewContextOptions()
                .setViewportSize(820, 1180)
                .setHasTouch(true)
                .setIsMobile(true)
                .setBaseURL(address));
    }

    /** A browser that runs no scripts. */
    Page withoutScripts(String address) {
        return page(new Browser.NewContextOptions()
                .setViewportSize(1440, 900)
                .setJavaScriptEnabled(false)
                .setBaseURL(address));
    }

    /** A page without any network, for files that have to do without. */
    public Page offline(boolean scripts) {
        return page(new Browser.NewContextOptions()
                .setViewportSize(820, 1180)
                .setOffline(true)
                .setJavaScriptEnabled(scripts));
    }

    private Page page(Browser.NewContextOptions options) {
        BrowserContext context = browser.newContext(options);
        Page page = context.newPage();
        page.setDefaultTimeout(15_000);
        page.onConsoleMessage(message -> {
            if (message.type().equals("error")
                    && !REFUSED.matcher(message.text()).find()) {
                complaints.add(message.text() + " (" + page.url() + ")");
            }
        });
        page.onPageError(error -> complaints.add(error + " (" + page.url() + ")"));
        return page;
    }

    /** What any page wrote as an error; should stay empty. */
    public List<String> complaints() {
        return List.copyOf(complaints);
    }

    /** The complaints so far, which are then forgotten. */
    List<String> takeComplaints() {
        List<String> taken = complaints();
        complaints.clear();
        return taken;
    }

    @Override
    public void close() {
        playwright.close();
    }
}
