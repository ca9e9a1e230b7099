package stillroom.desk.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.material.Lot;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.LiveScale;
import stillroom.formulary.quantity.Grams;
import stillroom.science.weighing.ScaleLine;

/** The weight and the code of a bottle as the browser reads them; the wire and the camera are played by the page itself. */
@Tag("browser")
final class LiveWeightAndCameraTest {
    /** A serial port whose other end is in the hands of the test. */
    private static final String WIRE = "window.opened = 0;"
            + "Object.defineProperty(navigator, 'serial', { configurable: true, value: { requestPort: async () => ({"
            + "  open: async () => {"
            + "    if (window.busy) throw new Error('busy'); window.busy = true; window.opened += 1;"
            + "    window.port = new ReadableStream({ start(wire) { window.wire = wire; } }); },"
            + "  close: async () => { window.busy = false; },"
            + "  get readable() { return window.port; } }) } });"
            + "window.send = (text) => window.wire.enqueue(new TextEncoder().encode(text));";

    /** A camera that sees whatever code the test holds before it. */
    private static final String CAMERA = "window.held = '';"
            + "window.BarcodeDetector = class { async detect() {"
            + "  return window.held ? [{ rawValue: window.held }] : []; } };"
            + "navigator.mediaDevices.getUserMedia = async () => {"
            + "  if (window.forbidden) throw new Error('forbidden');"
            + "  const canvas = document.createElement('canvas'); canvas.getContext('2d').fillRect(0, 0, 9, 9);"
            + "  return canvas.captureStream(5); };";

    @TempDir
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private OpenDesk desk;

    @SuppressWarnings("NullAway.Init")
    private BenchBrowser browser;

    @SuppressWarnings("NullAway.Init")
    private Page page;

    @BeforeEach
    void open() {
        desk = OpenDesk.in(folder);
        browser = new BenchBrowser();
        desk.ledger()
                .equipment()
                .writeBalances(List.of(new Balance("Scale", Grams.of("0.01"), Optional.empty(), Grams.of("600"))
                        .with(Optional.empty(), Optional.of(new LiveScale(ScaleLine.USUAL, "moving", 9600, "")))));
        lot(
                "W-1",
                "water-purified",
                OpenDesk.NOW.atZone(java.time.ZoneOffset.UTC).toLocalDate());
        lot("G-1", "glycerin-99", LocalDate.of(2027, 1, 1));
        lot("G-old", "glycerin-99", LocalDate.of(2026, 1, 1));
        desk.ledger().products().add("Gel", Brief.of(ProductType.OTHER_RINSE_OFF), "");
        Formula formula = new Formula(List.of(new Phase(
                "all",
                "All",
                List.of(
                        new Line("g", "glycerin-99", Amount.fixed("5"), ""),
                        new Line("w", "water-purified", new Amount.ToHundred(), "")),
                List.of())));
        desk.ledger().products().newVersion(1, Optional.empty(), formula, "", OpenDesk.NOW);
        assertThat(desk.post(
                                "/products/1/versions/1/plan",
                                Map.of("by", "mass", "mass", "300", "code", "GEL-1", "who", "Ada", "edit", edit()))
                        .status())
                .isEqualTo(303);
        desk.post(
                "/batches/1/log",
                Map.of(
                        "act",
                        "ready",
                        "newVessel",
                        "Pot",
                        "clean",
                        "washed",
                        "phase",
                        "all",
                        "by",
                        "Ada",
                        "seen",
                        "1",
                        "requestId",
                        "ready-the-pot"));
        page = browser.desktop(desk.address());
    }

    @AfterEach
    void close() {
        browser.close();
        desk.close();
    }

    private String edit() {
        return desk.get("/products/1/versions/1/plan")
                .body()
                .replaceAll("(?s).*name=\"edit\" value=\"(\\d+)\".*", "$1");
    }

    private void lot(String code, String material, LocalDate expires) {
        desk.ledger()
                .lots()
                .add(new Lot(
                        code,
                        material,
                        "",
                        "Invented supplier",
                        Grams.of("1000"),
                        LocalDate.of(2025, 12, 1),
                        Optional.empty(),
                        Optional.of(expires),
                        Optional.empty(),
                        Lot.State.RELEASED,
                        ""));
    }

    private void bench(String stub) {
        page.addInitScript(stub);
        page.navigate("/batches/1/bench?do=weigh&vessel=Pot&line=g");
        page.waitForSelector("#mass");
    }

    private void read(String sends) {
        page.locator("[data-live-read]").click();
        page.waitForFunction(
                "() => window.wire && document.querySelector('[data-live-words]').textContent === 'Reading'");
        page.evaluate(sends);
    }

    private void said(String words) {
        page.waitForFunction("w => document.querySelector('[data-live-words]').textContent.includes(w)", words);
    }

    @Test
    void theWeightOfTheWireIsTakenAtRestAndRubbishNever() {
        bench(WIRE);
        // The first line may be the end of a longer number: 9.99 of 19.99 is no weight.
        read("() => { send('9.99 g\\r\\n 15.'); send('02 g\\r\\n'); }");
        said("15.02 g, at rest");
        assertThat(page.inputValue("#mass")).isEqualTo("15.02");
        page.fill("#mass", "");

        read("() => send('moving 14.80 g\\r\\n')");
        said("14.80 g, still moving");
        read("() => send('%#\\u0000\\u00ff 99 <b>g</b>\\r\\n')");
        said("Nothing that can be read came");
        read("() => send('15.0')");
        said("Nothing that can be read came");
        assertThat(page.inputValue("#mass")).isEmpty();

        // What was cut off is finished, and the line after it counts.
        read("() => send('1 g\\r\\n15.03 g\\r\\n')");
        said("15.03 g, at rest");
        assertThat(page.inputValue("#mass")).isEqualTo("15.03");
        assertThat((Integer) page.evaluate("() => window.opened")).isEqualTo(1);
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void aPortThatClosesIsSaidAndOpensAgain() {
        bench(WIRE);
        read("() => window.wire.close()");
        said("The line was closed");
        read("() => send('\\r\\n7.50 g\\r\\n')");
        said("7.50 g, at rest");
        read("() => window.wire.error(new Error('pulled out'))");
        said("The line was closed");
        assertThat(page.inputValue("#mass")).as("typed weights go on").isEqualTo("7.50");
        page.evaluate("() => { navigator.serial.requestPort = async () => { throw new Error('none chosen'); }; }");
        page.locator("[data-live-read]").click();
        said("could not be opened");
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void theCameraStopsTheWrongBottleAndTheRightOneStandsInTheLog() {
        bench(CAMERA);
        hold("W-1");
        page.waitForSelector(".scan-stop");
        assertThat(page.textContent(".scan-stop")).contains("Stop: lot W-1 is");
        assertThat(page.locator("#mass").count()).isZero();
        hold("G-old");
        page.waitForFunction("() => (document.querySelector('.scan-stop')||{}).textContent?.includes('expired')");
        hold("G-1");
        page.waitForSelector(".scan-right");
        page.fill("#mass", "15");
        page.getByText("Write it down", new Page.GetByTextOptions().setExact(true))
                .first()
                .click();
        page.waitForFunction("() => !document.querySelector('.scan-right')");
        assertThat(desk.get("/batches/1").body()).contains("(lot G-1, scanned)");
        assertThat(browser.complaints()).isEmpty();
    }

    /** The camera is started, and a bottle is held before it a moment later. */
    private void hold(String code) {
        page.evaluate("() => { window.held = ''; }");
        Locator camera = page.locator("[data-camera]");
        camera.click();
        page.waitForFunction("() => document.querySelector('[data-camera]').textContent === 'Stop the camera'");
        page.evaluate("code => { window.held = code; }", code);
    }

    @Test
    void aCameraThatMayNotBeUsedIsSaidAndTheHandScannerGoesOn() {
        bench(CAMERA);
        page.evaluate("() => { window.forbidden = true; }");
        page.locator("[data-camera]").click();
        page.waitForFunction("() => document.querySelector('[data-camera]').textContent === 'No camera'");
        // A hand scanner types into what has the focus, and ends with Enter.
        page.focus("#mass");
        page.keyboard().type("G-1");
        page.keyboard().press("Enter");
        page.waitForSelector(".scan-right");
        assertThat(page.inputValue("#mass")).isEmpty();
        assertThat(browser.complaints()).isEmpty();
    }
}
