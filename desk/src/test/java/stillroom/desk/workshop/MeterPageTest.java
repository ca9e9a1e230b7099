package stillroom.desk.workshop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.desk.OpenDesk.Answer;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.meter.MeterCalibration;
import stillroom.formulary.quantity.Interval;

class MeterPageTest {
    private OpenDesk desk;

    @BeforeEach
    void open(@TempDir Path folder) {
        desk = OpenDesk.in(folder);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private Answer calibrate(String... fields) {
        Map<String, String> form = new HashMap<>(Map.of(
                "meter", "electrode 1",
                "celsius", "20",
                "by", "Ana",
                "lowBuffer", "buffer 4.01",
                "highBuffer", "buffer 7.00",
                "lowLot", "B4-1",
                "slope", "98.2",
                "offset", "-4"));
        for (int i = 0; i < fields.length; i += 2) {
            form.put(fields[i], fields[i + 1]);
        }
        return desk.post("/workshop/meter", form);
    }

    private void addMeter() {
        assertThat(desk.post("/workshop/meter/add", Map.of("name", "electrode 1", "repeatability", "0.03"))
                        .status())
                .isEqualTo(303);
    }

    /** At 20 °C the bottles named 4.01 and 7.00 are 4.00 and 7.02: the table of a pH analyser's manual, as in ReferenceBuffers. */
    @Test
    void aCalibrationKeepsTheTruePhOfItsBuffersAtTheirTemperature() {
        addMeter();
        assertThat(calibrate().status()).isEqualTo(303);
        MeterCalibration kept = desk.ledger().meters().calibrations().get(0);
        assertThat(kept.low().pH()).isEqualTo(4.00);
        assertThat(kept.high().pH()).isEqualTo(7.02);
        assertThat(kept.low().lot()).isEqualTo("B4-1");
        assertThat(desk.get("/workshop/meter").body()).contains("and it holds").contains("slope 98.2 %");
    }

    @Test
    void aFailedCalibrationIsWrittenDownAndSaysSo() {
        addMeter();
        assertThat(calibrate("slope", "90").status()).isEqualTo(303);
        assertThat(desk.get("/workshop/meter").body())
                .contains("Not to be relied on")
                .contains("90.0 %");
    }

    @Test
    void aProductOutsideTheBuffersIsNamed() {
        Brief plain = Brief.of(ProductType.TONER);
        desk.ledger()
                .products()
                .add(
                        "Strong toner",
                        new Brief(
                                plain.type(),
                                plain.people(),
                                "",
                                "",
                                Optional.of(new Interval(3.2, 3.8)),
                                Optional.empty(),
                                Optional.empty(),
                                plain.claims(),
                                "",
                                "EU"),
                        "");
        addMeter();
        calibrate();
        assertThat(desk.get("/workshop/meter").body()).contains("Outside the two buffers: Strong toner (pH 3.5)");
    }

    @Test
    void badInputIsRefusedBesideItsField() {
        addMeter();
        assertThat(calibrate("celsius", "").body()).contains("The temperature of the buffers is missing");
        assertThat(calibrate("lowBuffer", "buffer 10.01").body()).contains("must have a higher pH");
        assertThat(calibrate("slope", "", "offset", "").body()).contains("nothing shows that it is right");
        assertThat(calibrate("lowBuffer", "another buffer").body()).contains("type its pH from the bottle");
        assertThat(calibrate("lowPh", "15").body()).contains("must lie between 0 and 14");
        Answer stranger = calibrate("meter", "unheard of");
        assertThat(stranger.status()).isEqualTo(422);
        assertThat(desk.ledger().meters().calibrations()).isEmpty();
    }
}
