package stillroom.desk.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;

/** Trials, curves and the comparison in all their states, scanned for barriers and looked at in three widths. */
@Tag("browser")
final class TrialsForEveryoneTest {
    private static final String TRIALS = "/trials/t0001";
    private static final String SALT =
            "/trials/salt-curve?instrument=rotational&geometry=DISC_SPINDLE&spindle=R4&speed=20&celsius=25&age=24";

    private static final List<String> PAGES = List.of(
            "/trials",
            "/trials/new?product=1&version=2",
            TRIALS,
            TRIALS + "/results",
            TRIALS + "/results?response=Foam&model=LINEAR&selection=AKAIKE",
            TRIALS + "/results?response=Dryness&model=SPECIAL_CUBIC&selection=BACKWARD",
            "/trials/salt-curve",
            "/trials/salt-curve?product=2",
            SALT + "&wanted=3000&readings=1+900%0A1.5+2100%0A2+3900%0A2.5+5600%0A3+6100%0A3.5+5200%0A4+3500",
            SALT + "&readings=1+900%0A1.5+2100",
            "/trials/flow-curve",
            "/trials/flow-curve?geometry=CONE_AND_PLATE&readings=0.1+60%0A1+15%0A10+3.8%0A100+0.95%0A300+.5%0A1000+0.24",
            "/trials/curves/v0001",
            "/side-by-side",
            "/side-by-side?of=1.2",
            "/side-by-side?of=1.1&of=1.2&of=6.1&of=6.2&of=6.3&of=6.4",
            "/side-by-side?of=1.1&of=1.2&of=6.1&of=6.2&of=6.3&of=6.4&of=6.5");

    @TempDir
    private Path folder;

    @Test
    void noneOfItHasABarrier() throws IOException {
        try (OpenDesk desk = OpenDesk.in(folder);
                BenchBrowser browser = new BenchBrowser()) {
            Look at = new Look(browser, Sight.of(browser.desktop(desk.address())));
            assertThat(desk.post("/demonstration", Map.of()).status()).isEqualTo(303);
            photograph(desk);
            PAGES.forEach(at::page);
            List.of("/trials/new?product=1&version=2", TRIALS, "/trials/curves/v0001")
                    .forEach(at::refusal);
            unfolded(at);
            changedElsewhere(at);
            undefinedGeometry(at);
            assertThat(desk.post(TRIALS + "/more", Map.of("more", "2")).status())
                    .isEqualTo(303);
            at.page(TRIALS);
            assertThat(at.barriers()).isEmpty();
        }
    }

    private static void photograph(OpenDesk desk) throws IOException {
        long batch = desk.ledger().batches().fromVersion(1, 2).get(0).batch().id();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(1600, 1200, BufferedImage.TYPE_INT_RGB), "png", bytes);
        Map<String, String> form =
                Map.of("requestId", "12345678-b", "when", "next day", "words", "clear", "by", "Wren");
        assertThat(desk.postFile("/batches/" + batch + "/pictures", form, "picture", "photo.png", bytes.toByteArray())
                        .status())
                .isEqualTo(303);
    }

    private static void unfolded(Look at) {
        for (String address : List.of("/trials/new?product=1&version=2", TRIALS + "/results?response=Viscosity")) {
            at.after(
                    address,
                    "unfolded",
                    page -> page.evaluate(
                            "() => { document.querySelectorAll('main details').forEach((one) => { one.open = true; });"
                                    + " document.querySelectorAll('[name=component]').forEach((one) => { one.checked = true; }); }"));
        }
    }

    private static void changedElsewhere(Look at) {
        at.after(TRIALS, "measured elsewhere meanwhile", page -> {
            page.evaluate("() => { document.querySelector('#mark').value = '0'; }");
            page.fill("#m1-0", "4321");
            page.locator(".save-bar button").click();
            page.waitForSelector("#stale-head");
        });
        at.after(TRIALS, "runs added elsewhere meanwhile", page -> {
            page.evaluate("() => { document.querySelector('#more-mark').value = '0'; }");
            page.locator("text=Add runs").click();
            page.waitForSelector("#more-problem");
        });
    }

    private static void undefinedGeometry(Look at) {
        at.after("/trials/flow-curve", "no defined shear rate", page -> {
            page.selectOption("#geometry", "DISC_SPINDLE");
            page.fill("#readings", "1 2");
            page.locator("text=Fit the models").click();
            page.waitForSelector("#geometry-problem");
        });
    }
}
