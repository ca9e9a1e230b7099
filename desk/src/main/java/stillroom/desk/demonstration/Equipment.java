package stillroom.desk.demonstration;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.packs.PackShelf;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.ToolShed;
import stillroom.formulary.hygiene.Cleaning;
import stillroom.formulary.hygiene.Tool;
import stillroom.formulary.meter.MeterBuffer;
import stillroom.formulary.meter.MeterCalibration;
import stillroom.formulary.meter.PhMeter;
import stillroom.formulary.pack.Pack;
import stillroom.formulary.pack.PackLot;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Money;

/** The invented meter, vessels, tools and containers, with what was done to them; all times count back from now. */
record Equipment(Desk desk, Instant now) {
    static final String METER = "Bench meter";
    static final String KETTLE = "Kettle 3 l";
    static final String LARGE_BEAKER = "Beaker 1 l";
    static final String BEAKER = "Beaker 400 ml";
    static final String PUMP_BOTTLE = "PET bottle with pump, 250 ml";
    static final String PUMP_LOT = "PUMP-01";

    void write() {
        meter();
        vessels();
        packs();
    }

    /** Set on the mornings on which something was read, and this morning. */
    private void meter() {
        desk.ledger().meters().write(new PhMeter(METER, PhMeter.USUAL_REPEATABILITY, Optional.of(24)));
        for (int days : List.of(12, 11, 9, 4)) {
            calibrated(now.minus(Duration.ofDays(days)).minus(Duration.ofMinutes(15)), 98.1 + days * 0.05);
        }
        calibrated(now.minus(Duration.ofHours(22)).minus(Duration.ofMinutes(15)), 97.9);
        calibrated(now.minus(Duration.ofMinutes(80)), 97.8);
    }

    private void calibrated(Instant at, double slopePercent) {
        LocalDate keeps = LocalDate.ofInstant(now, desk.zone()).plusDays(200);
        desk.ledger()
                .meters()
                .add(new MeterCalibration(
                        METER,
                        at,
                        Saltmarsh.FIRST,
                        22,
                        new MeterBuffer("buffer 4.01", "B4-11", Optional.of(keeps), 4.00),
                        new MeterBuffer("buffer 7.00", "B7-08", Optional.of(keeps), 7.01),
                        Optional.of(slopePercent),
                        Optional.of(-6.0),
                        Optional.empty(),
                        Optional.empty(),
                        ""));
    }

    private void vessels() {
        tool(KETTLE, true, "412.3", "3000", "stainless steel");
        tool(LARGE_BEAKER, true, "310.42", "1000", "glass; two of them");
        tool(BEAKER, true, "142.37", "400", "glass");
        tool("Spatula 1", false, "", "", "silicone");
        tool("Stick blender", false, "", "", "the shaft comes off");
        cleaned(KETTLE, Cleaning.Act.CLEANED, "washed, rinsed twice", 26);
        cleaned(KETTLE, Cleaning.Act.SANITISED, "steam", 2);
        cleaned("Spatula 1", Cleaning.Act.SANITISED, "alcohol 70 %", 3);
        cleaned("Stick blender", Cleaning.Act.USED, "a batch of trials", 1);
    }

    private void tool(String name, boolean vessel, String tare, String capacity, String note) {
        new ToolShed(desk).tools().write(name, new Tool(name, vessel, grams(tare), grams(capacity), 12, note));
    }

    private static Optional<Grams> grams(String typed) {
        return typed.isEmpty() ? Optional.empty() : Optional.of(Grams.of(typed));
    }

    private void cleaned(String name, Cleaning.Act act, String agent, int hoursAgo) {
        Instant at = now.minus(Duration.ofHours(hoursAgo));
        desk.ledger().happenings("tool", Cleaning.class).add(name, at, new Cleaning(at, Saltmarsh.SECOND, act, agent));
    }

    private void packs() {
        pack(PUMP_BOTTLE, "PET", "286", "28.1", "Hand wash: clear and tight after twelve weeks (invented study).");
        pack("Glass bottle with disc top, 100 ml", "glass", "112", "96.4", "");
        pack("Jar, 50 ml", "PP", "58", "17.2", "");
        lot(PUMP_LOT, PUMP_BOTTLE, 60, 40, "0.42");
        lot("DISC-02", "Glass bottle with disc top, 100 ml", 48, 25, "0.61");
        lot("JAR-01", "Jar, 50 ml", 100, 90, "0.33");
    }

    private void pack(String name, String material, String capacity, String tare, String compatibility) {
        new PackShelf(desk)
                .packs()
                .write(
                        name,
                        new Pack(
                                name,
                                material,
                                "PE",
                                Optional.of(new BigDecimal(capacity)),
                                Optional.of(Grams.of(tare)),
                                Optional.of(Grams.of("0.2")),
                                Optional.of(60.0),
                                compatibility));
    }

    private void lot(String code, String pack, int received, int daysAgo, String each) {
        new PackShelf(desk)
                .lots()
                .write(
                        code,
                        new PackLot(
                                code,
                                pack,
                                "Tern Containers (invented)",
                                "T" + (700 + daysAgo),
                                received,
                                LocalDate.ofInstant(now, desk.zone()).minusDays(daysAgo),
                                Optional.of(Money.of(each)),
                                false,
                                ""));
    }

    /** How a pH was read. */
    static Map<String, String> readWith() {
        return Map.of("measured", "neat", "sample temperature", "22 °C", "electrode", METER, "minutes to stable", "2");
    }
}
