package stillroom.desk.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;

/** Every kind of page, scanned for barriers and looked at in three widths. */
@Tag("browser")
final class AccessibilityTest {
    /** Links alone lead to more than these; fewer would mean that the walk was cut off. */
    private static final int FEWEST_KINDS = 60;

    /** Pages that only a form, a shortage or a mistyped address leads to, and another state of one that links lead to. */
    private static final List<String> BESIDES = List.of(
            "/patterns",
            "/no-such-page",
            "/batches/987654321",
            "/batches?code=none-like-this",
            "/materials?q=nothing-like-this",
            "/products/1",
            "/products/1/versions/1",
            "/products/1/compare?left=1&right=2",
            "/products/1/versions/2/plan?by=containers&containers=20&fill=250&fillUnit=ml",
            "/products/1/versions/2/plan?by=mass&mass=90000",
            "/products/1/versions/2/plan/shopping?by=mass&mass=90000",
            "/products/1/versions/2/anew",
            "/products/1/versions/2/anew?without=sles-27&aim=CHANGE&own-anionic-active-matter=12&most-glycerin-99=5",
            "/products/1/versions/2/anew?aim=COST&curve=on&first=COST&second=CHANGE",
            "/products/1/versions/2/anew?active=much",
            "/products/1/versions/2/anew?without=sles-27&also=cocamidopropyl-betaine-30&aim=NATURAL",
            "/side-by-side",
            "/side-by-side?of=1.1&of=1.2");

    /** Forms that are sent with nothing in them that could be taken. */
    private static final List<String> FORMS = List.of(
            "/products/new",
            "/products/1/brief",
            "/products/1/versions/1/label",
            "/materials/new",
            "/materials/glycerin-86/edit",
            "/materials/glycerin-86/lots/new",
            "/workshop",
            "/workshop/balances/new",
            "/workshop/balances/1",
            "/batches/free-hand",
            "/batches/2/fill",
            "/batches/2/bench?do=read&kind=PH",
            "/batches/2/bench?do=sample",
            "/batches/2/bench?do=rest");

    @TempDir
    private Path folder;

    @Test
    void noPageOfAFullWorkshopHasABarrier() {
        try (OpenDesk desk = OpenDesk.in(folder);
                BenchBrowser browser = new BenchBrowser()) {
            Look at = new Look(browser, Sight.of(browser.desktop(desk.address())));
            at.page("/");
            assertThat(desk.post("/demonstration", Map.of()).status()).isEqualTo(303);
            List<String> kinds = KindsOfPages.of(desk);
            assertThat(kinds).as("kinds of pages found").hasSizeGreaterThan(FEWEST_KINDS);
            kinds.forEach(at::page);
            BESIDES.forEach(at::page);
            FORMS.forEach(at::refusal);
            overPoured(at);
            changedElsewhere(at);
            assertThat(at.barriers()).isEmpty();
        }
    }

    @Test
    void norHasAnEmptyOne() {
        try (OpenDesk desk = OpenDesk.in(folder);
                BenchBrowser browser = new BenchBrowser()) {
            Look at = new Look(browser, Sight.of(browser.desktop(desk.address())));
            at.refusal("/");
            assertThat(desk.post("/", Map.of("name", "Hill bench")).status()).isEqualTo(303);
            List.of("/", "/products", "/batches", "/lots", "/workshop").forEach(at::page);
            assertThat(at.barriers()).isEmpty();
        }
    }

    private static void overPoured(Look at) {
        at.after("/batches/3/bench?vessel=Beaker+400+ml", "over its target", page -> {
            page.fill("#mass", "90");
            page.locator(".weight-go").click();
            page.waitForSelector("text=Over its target");
        });
    }

    private static void changedElsewhere(Look at) {
        at.after("/products/5/versions/1", "changed elsewhere", page -> {
            page.evaluate("() => { document.querySelector('#formula [name=edit]').value = '0'; }");
            page.fill("#why", "as I would have it");
            page.keyboard().press("Tab");
            page.waitForSelector("#stale-head");
        });
    }
}
