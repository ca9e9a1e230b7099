package stillroom.desk.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.change.LawComparison;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.judgement.Evaluator;
import stillroom.ledger.Ledger;

class LawPagesTest {
    private static final LocalDate BEFORE = LocalDate.of(2025, 10, 31);
    private static final LocalDate AFTER = LocalDate.of(2025, 11, 1);

    @TempDir
    Path folder;

    private static Line line(String id, String material, String percent) {
        return new Line(id, material, percent.equals("q.s.") ? new Amount.ToHundred() : Amount.fixed(percent), "");
    }

    /** Retinol above what (EU) 2024/996 leaves from 1 November 2025 on. */
    private static long retinolCream(Ledger ledger, String name) {
        long product = ledger.products()
                .add(name, Brief.of(ProductType.FACE_CREAM), "")
                .id();
        Formula formula = new Formula(List.of(new Phase(
                "a",
                "A",
                List.of(
                        line("l1", "water-purified", "q.s."),
                        line("l2", "retinol-in-oil", "4"),
                        line("l3", "emulsifying-wax", "5"),
                        line("l4", "phenoxyethanol", "0.9")),
                List.of())));
        ledger.products().newVersion(product, Optional.empty(), formula, "", Instant.EPOCH);
        return product;
    }

    private static long oil(Ledger ledger) {
        long product = ledger.products()
                .add("Body oil <plain>", Brief.of(ProductType.BODY_OIL), "")
                .id();
        Formula formula =
                new Formula(List.of(new Phase("a", "A", List.of(line("l1", "sunflower-oil", "100")), List.of())));
        ledger.products().newVersion(product, Optional.empty(), formula, "", Instant.EPOCH);
        return product;
    }

    @Test
    void theRecordIsShownAsOfADay() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            Answer now = desk.get("/law?market=EU&on=2026-11-25");
            assertThat(now.status()).isEqualTo(200);
            assertThat(now.body()).contains("Annex V: preservatives", "What the record does not cover", "unread");
            assertThat(desk.get("/law?market=US").body()).contains("United States", "Colour additives");
            assertThat(desk.get("/law?market=nowhere").status()).isEqualTo(200);
            Answer wrong = desk.get("/law?on=yesterday");
            assertThat(wrong.status()).isEqualTo(422);
            assertThat(wrong.body()).contains("is not a date", "yesterday");
        }
    }

    @Test
    void aTableShowsItsRowsAndWhichCount() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            Answer early = desk.get("/law/tables/EU/annex-iii?on=2024-01-01");
            assertThat(early.status()).isEqualTo(200);
            assertThat(early.body()).contains("eu-annex-iii-376.b", "not on this day", "(EU) 2024/996");
            assertThat(desk.get("/law/tables/EU/annex-x").status()).isEqualTo(404);
            assertThat(desk.get("/law/tables/XX/annex-iii").status()).isEqualTo(404);
        }
    }

    @Test
    void aProductIsComparedOnTwoDays() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            long cream = retinolCream(desk.ledger(), "Night cream");
            Answer changed = desk.get("/products/" + cream + "/law?from=2025-10-31&to=2025-11-01");
            assertThat(changed.status()).isEqualTo(200);
            assertThat(changed.body())
                    .contains("eu-annex-iii-376.b", "Weighs otherwise", "Contains Vitamin A", "begins for products");
            long oil = oil(desk.ledger());
            assertThat(desk.get("/products/" + oil + "/law?from=2025-10-31&to=2025-11-01")
                            .body())
                    .contains("No finding and no label text changes", "Body oil &lt;plain&gt;");
            Answer backwards = desk.get("/products/" + oil + "/law?from=2025-11-01&to=2025-10-31");
            assertThat(backwards.status()).isEqualTo(422);
            assertThat(backwards.body()).contains("lies before the first one");
            assertThat(desk.get("/products/999/law").status()).isEqualTo(404);
            assertThat(desk.get("/products/" + oil).body()).contains("/products/" + oil + "/law");
        }
    }

    @Test
    void everyFormulaIsJudgedByTwoDaysAndWhatChangesIsListed() throws InterruptedException {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            retinolCream(desk.ledger(), "Night cream");
            oil(desk.ledger());
            Answer begun = desk.post(
                    "/law/sweep", Map.of("from", BEFORE.toString(), "to", AFTER.toString(), "which", "EVERY"));
            assertThat(begun.status()).isEqualTo(303);
            String page = desk.get("/law/sweep").body();
            for (int i = 0; i < 100 && page.contains("hx-trigger"); i++) {
                Thread.sleep(50);
                page = desk.get("/law/sweep").body();
            }
            assertThat(page)
                    .contains("2 formulas of 2 products", "Night cream, version 1", "eu-annex-iii-376.b")
                    .doesNotContain("Body oil");
        }
    }

    @Test
    void whatIsMissingOrWrongIsSaidBesideItsField() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            Answer empty = desk.post("/law/sweep", Map.of("from", "", "to", "x", "which", "EVERY"));
            assertThat(empty.status()).isEqualTo(422);
            assertThat(empty.body()).contains("Name the first day.", "is not a date");
            Answer backwards =
                    desk.post("/law/sweep", Map.of("from", "2026-02-01", "to", "2026-01-01", "which", "EVERY"));
            assertThat(backwards.status()).isEqualTo(422);
            assertThat(backwards.body()).contains("lies before the first one", "2026-02-01");
            assertThat(desk.post("/law/sweep/stop", Map.of()).status()).isEqualTo(303);
        }
    }

    @Test
    void aSweepIsStoppedAndSaysHowFarItCame() {
        try (Ledger ledger = Ledger.open(folder)) {
            ManyFormulas.store(ledger, 300, 7);
            LawComparison comparison = new LawComparison(Evaluator.standard());
            Sweep sweep = Sweep.begin(ledger, comparison, new Sweep.Wish(BEFORE, AFTER, Sweep.Which.EVERY));
            sweep.stop();
            assertThat(sweep.await(60)).isTrue();
            assertThat(sweep.isRunning()).isFalse();
            assertThat(sweep.done()).isLessThan(300);
            assertThat(sweep.isStopped()).isTrue();
        }
    }

    /** The order of threads must not show. */
    @Test
    void oneThreadAndFourFindTheSame() {
        try (Ledger ledger = Ledger.open(folder)) {
            ManyFormulas.store(ledger, 60, 3);
            LawComparison comparison = new LawComparison(Evaluator.standard());
            Sweep.Wish wish = new Sweep.Wish(LocalDate.of(2020, 1, 1), LocalDate.of(2028, 8, 1), Sweep.Which.NEWEST);
            Sweep one = Sweep.begin(ledger, comparison, wish, 1);
            assertThat(one.await(120)).isTrue();
            Sweep four = Sweep.begin(ledger, comparison, wish, 4);
            assertThat(four.await(120)).isTrue();
            assertThat(one.changed()).isNotEmpty().isEqualTo(four.changed());
            assertThat(one.formulas()).isEqualTo(60);
            assertThat(one.failed()).isEmpty();
        }
    }
}
