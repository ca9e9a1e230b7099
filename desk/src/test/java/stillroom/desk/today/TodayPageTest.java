package stillroom.desk.today;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.formulary.material.Lot;
import stillroom.formulary.quantity.Grams;

class TodayPageTest {
    @TempDir
    Path folder = Path.of("");

    @Test
    void anEmptyWorkshopSaysHelloAndTakesAName() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            assertThat(desk.get("/").body()).contains("A new workshop", "Look around the demonstration workshop");
            assertThat(desk.post("/", Map.of("name", " ")).body()).contains("The name is missing");

            assertThat(desk.post("/", Map.of("name", "Bench & Beaker")).status())
                    .isEqualTo(303);
            assertThat(desk.get("/").body())
                    .contains("Bench &amp; Beaker", "Nothing is due and nothing is in work")
                    .doesNotContain("A new workshop");
        }
    }

    @Test
    void lotsThatExpireSoonAreListed() {
        LocalDate today = LocalDate.of(2026, 11, 25);
        try (OpenDesk desk = OpenDesk.in(folder)) {
            lot(desk, "SOON", today.plusDays(30));
            lot(desk, "LATE", today.plusDays(31));
            lot(desk, "GONE", today.minusDays(2));

            assertThat(desk.get("/").body())
                    .contains("SOON", "to 25 Dec 2026", "GONE", "expired 23 Nov 2026")
                    .doesNotContain("LATE");
        }
    }

    private static void lot(OpenDesk desk, String code, LocalDate expires) {
        desk.ledger()
                .lots()
                .add(new Lot(
                        code,
                        "glycerin-99",
                        "",
                        "Invented supplier",
                        Grams.of("100"),
                        LocalDate.of(2026, 1, 5),
                        Optional.empty(),
                        Optional.of(expires),
                        Optional.empty(),
                        Lot.State.RELEASED,
                        ""));
    }
}
