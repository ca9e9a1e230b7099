package stillroom.desk.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.time.Duration;
import java.util.function.BiFunction;
import stillroom.desk.OpenDesk;

/** Walks the road with a night between: the program is closed and opened again, as in a real workshop. */
final class TwoDays {
    private TwoDays() {}

    static void walk(Path folder, BiFunction<BenchBrowser, String, Page> screen, BiFunction<Page, Sight, Hands> hands) {
        try (BenchBrowser browser = new BenchBrowser()) {
            try (OpenDesk desk = OpenDesk.in(folder)) {
                road(screen.apply(browser, desk.address()), hands).firstDay();
                WhatIsKept.afterTheFirstDay(desk.ledger());
            }
            try (OpenDesk desk = OpenDesk.at(folder, OpenDesk.NOW.plus(Duration.ofHours(25)))) {
                road(screen.apply(browser, desk.address()), hands).nextDay();
                WhatIsKept.atTheEnd(desk.ledger());
            }
            assertThat(browser.complaints()).isEmpty();
        }
    }

    private static WholeRoad road(Page page, BiFunction<Page, Sight, Hands> hands) {
        Sight sight = Sight.of(page);
        return new WholeRoad(page, hands.apply(page, sight), sight);
    }
}
