package stillroom.desk.lots;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.material.Lot;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Price;

class LotPagesTest {
    private OpenDesk desk;

    @BeforeEach
    void open(@TempDir Path folder) {
        desk = OpenDesk.in(folder);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private static Map<String, String> delivery(String code) {
        return new HashMap<>(Map.of(
                "code", code, "received", "1000", "received-on", "2026-11-01", "supplier", "Tideline <Supplies>"));
    }

    private Lot lot(String code) {
        return desk.ledger().lots().lot(code).orElseThrow().lot();
    }

    private void receive(String code, String material, String expires) {
        Map<String, String> form = delivery(code);
        form.put("expires", expires);
        assertThat(desk.post("/materials/" + material + "/lots/new", form).status())
                .isEqualTo(303);
    }

    @Test
    void aDeliveryIsBookedUnderTheProposedCode() {
        assertThat(desk.get("/materials/glycerin-99/lots/new").body()).contains("value=\"GLY-01\"");
        Map<String, String> form = delivery("GLY-01");
        form.putAll(Map.of("expires", "2027-06-30", "paid", "9,90", "paid-grams", "1000", "quarantine", "on"));
        Answer answer = desk.post("/materials/glycerin-99/lots/new", form);
        assertThat(answer.location()).isEqualTo("/lots/GLY-01?did=added");
        assertThat(lot("GLY-01").state()).isEqualTo(Lot.State.QUARANTINE);
        assertThat(lot("GLY-01").price().map(Price::amount)).contains(Grams.of("1000"));
        assertThat(desk.get("/materials/glycerin-99/lots/new").body()).contains("value=\"GLY-02\"");
        assertThat(desk.get("/lots/GLY-01").body())
                .contains("30 Jun 2027", "in quarantine", "9.90 EUR per kg", "Tideline &lt;Supplies>");
        assertThat(desk.get("/materials?q=glycerin&kind=stocked").body())
                .contains("1000 g", "1 lot in quarantine")
                .doesNotContain("/materials/glycerin-86");
    }

    @Test
    void badDeliveriesAreRefusedBesideTheirFields() {
        Answer answer = desk.post(
                "/materials/glycerin-99/lots/new",
                Map.of("code", "a/b <c>", "received", "-5", "received-on", "yesterday", "paid", "4"));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body())
                .contains("A lot code has up to 40 letters", "The amount must lie between", "is not a date")
                .contains("For how many grams", "a/b &lt;c>");
        assertThat(desk.ledger().lots().all()).isEmpty();
    }

    @Test
    void aCodeIsGivenOnce() {
        receive("X-1", "glycerin-99", "");
        Answer answer = desk.post("/materials/carnauba-wax/lots/new", delivery("X-1"));
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("Another lot bears this code; CAR-01 is free.");
    }

    @Test
    void waterKeepsItsSourceAndConductivity() {
        assertThat(desk.get("/materials/water-purified/lots/new").body()).contains("Conductivity");
        Map<String, String> form = delivery("W-1");
        form.putAll(Map.of("conductivity", "1,2", "treatment", "demineralised", "note", "own column"));
        desk.post("/materials/water-purified/lots/new", form);
        assertThat(lot("W-1").note()).isEqualTo("Conductivity 1.2 µS/cm. Treated: demineralised. own column");
    }

    @Test
    void lotsAreListedFirstExpiredFirst() {
        receive("LATE", "glycerin-99", "2028-01-01");
        receive("GONE", "glycerin-99", "2026-11-20");
        receive("SOON", "carnauba-wax", "2026-12-05");
        assertThat(desk.get("/lots").body())
                .containsSubsequence("/lots/GONE", "expired 5 days ago", "/lots/SOON", "in 10 days", "/lots/LATE");
    }

    @Test
    void thoseTickedLeaveQuarantineTogether() {
        for (String code : List.of("Q-1", "Q-2", "Q-3")) {
            Map<String, String> form = delivery(code);
            form.put("quarantine", "on");
            desk.post("/materials/glycerin-99/lots/new", form);
        }
        assertThat(desk.get("/lots").body()).contains("In quarantine", "These may be used", "value=\"Q-2\"");
        assertThat(desk.post("/lots", Map.of("lot", "Q-1")).location()).isEqualTo("/lots?did=saved");
        assertThat(List.of(lot("Q-1").state(), lot("Q-2").state()))
                .containsExactly(Lot.State.RELEASED, Lot.State.QUARANTINE);
        assertThat(desk.get("/lots").body()).doesNotContain("value=\"Q-1\"");
        assertThat(desk.post("/lots", Map.of("lot", "nothing")).status()).isEqualTo(303);
    }

    @Test
    void aCountMendsTheBookAndSaysWhy() {
        receive("G", "glycerin-99", "");
        Answer refused = desk.post("/lots/G/count", Map.of("found", "950"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.body()).contains("The reason is missing.", "Who counted is missing.", "value=\"950\"");
        assertThat(desk.post("/lots/G/count", Map.of("found", "950", "reason", "spilled <some>", "by", "Ada"))
                        .status())
                .isEqualTo(303);
        assertThat(desk.ledger().lots().stock("G").orElseThrow().onHand()).isEqualTo(Grams.of("950"));
        assertThat(desk.get("/lots/G").body()).contains("−50 g", "spilled &lt;some&gt;", "Ada");
    }

    @Test
    void factsChangeAndAStaleEditIsAnswered() {
        receive("G", "glycerin-99", "");
        String seen = Seen.of(lot("G"));
        Map<String, String> form = new HashMap<>(LotView.fields(lot("G")));
        form.putAll(Map.of("seen", seen, "state", "USED_UP", "note", "empty"));
        assertThat(desk.post("/lots/G", form).status()).isEqualTo(303);
        assertThat(lot("G").state()).isEqualTo(Lot.State.USED_UP);
        assertThat(desk.get("/lots").body()).doesNotContain("/lots/G\"").contains("Show used-up lots too (1)");
        assertThat(desk.get("/lots?used-up=yes").body()).contains("/lots/G\"");

        form.put("note", "not empty after all");
        Answer stale = desk.post("/lots/G", form);
        assertThat(stale.status()).isEqualTo(409);
        assertThat(stale.body()).contains("changed from elsewhere", "not empty after all");
        assertThat(lot("G").note()).isEqualTo("empty");
    }

    @Test
    void aBottleIsOpenedOnce() {
        receive("G", "glycerin-99", "");
        desk.post("/lots/G/opened", Map.of());
        assertThat(lot("G").opened()).contains(LocalDate.of(2026, 11, 25));
        Map<String, String> form = new HashMap<>(LotView.fields(lot("G")));
        form.putAll(Map.of("seen", Seen.of(lot("G")), "opened", "2026-10-01"));
        assertThat(desk.post("/lots/G", form).body()).contains("cannot be opened before it came");
    }

    @Test
    void unknownLotsAndMaterialsAreNotFound() {
        assertThat(desk.get("/lots/none").status()).isEqualTo(404);
        assertThat(desk.post("/lots/none", Map.of()).status()).isEqualTo(404);
        assertThat(desk.post("/lots/none/count", Map.of("found", "1")).status()).isEqualTo(404);
        assertThat(desk.get("/materials/none/lots/new").status()).isEqualTo(404);
    }
}
