package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Substance;
import stillroom.formulary.meter.MeterCalibration;
import stillroom.formulary.meter.PhMeter;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.BatchSize;
import stillroom.formulary.plan.Plan;
import stillroom.ledger.json.Json;
import stillroom.ledger.lot.StockCount;
import stillroom.ledger.workshop.Workshop;

/** Every kind of record that is kept reads back equal, and equal records are equal texts. */
final class JsonRoundTripTest {
    private static final int PER_TYPE = 150;

    @ParameterizedTest
    @ValueSource(
            classes = {
                Material.class,
                Substance.class,
                Lot.class,
                StockCount.class,
                Product.class,
                FormulaVersion.class,
                Balance.class,
                BatchSize.class,
                Plan.class,
                Batch.class,
                BatchEvent.class,
                LogEntry.class,
                Workshop.class,
                PhMeter.class,
                MeterCalibration.class
            })
    void readsBackEqual(Class<?> type) {
        for (int seed = 0; seed < PER_TYPE; seed++) {
            Object record = new RandomRecords(seed).of(type);
            String text = Json.write(record);
            Object back = Json.read(text, type);
            assertThat(back).as("seed %d: %s", seed, text).isEqualTo(record);
            assertThat(Json.write(back)).as("seed %d", seed).isEqualTo(text);
            assertThat(Json.read(Json.writeIndented(record), type))
                    .as("seed %d, indented", seed)
                    .isEqualTo(record);
        }
    }
}
