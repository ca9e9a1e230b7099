package stillroom.ledger.meter;

import java.util.List;
import stillroom.formulary.meter.MeterCalibration;
import stillroom.formulary.meter.PhMeter;
import stillroom.ledger.json.Json;
import stillroom.ledger.store.Database;

/** The pH meters of the workshop with their calibrations. A calibration never changes. Safe to use from many threads. */
public final class MeterBook {
    private final Database database;

    public MeterBook(Database database) {
        this.database = database;
    }

    /** By name. */
    public List<PhMeter> meters() {
        return database.read(sql ->
                sql.list("select body from ph_meter order by name", row -> Json.read(row.text("body"), PhMeter.class)));
    }

    /** Stores a meter; one of the same name is replaced, its calibrations stay. */
    public void write(PhMeter meter) {
        database.write(sql -> sql.run(
                "insert into ph_meter (name, body) values (?, ?) on conflict (name) do update set body = excluded.body",
                meter.name(),
                Json.writeOver(sql.body("select body from ph_meter where name = ?", meter.name()), meter)));
    }

    /** All calibrations of all meters, newest first. */
    public List<MeterCalibration> calibrations() {
        return database.read(sql -> sql.list(
                "select body from calibration order by at_ms desc, number desc",
                row -> Json.read(row.text("body"), MeterCalibration.class)));
    }

    /** Stores a calibration for good. */
    public void add(MeterCalibration calibration) {
        String body = Json.write(calibration);
        database.write(sql -> sql.run(
                "insert into calibration (number, meter, at_ms, body) values (?, ?, ?, ?)",
                sql.number("select coalesce(max(number), 0) + 1 as n from calibration"),
                calibration.meter(),
                calibration.at(),
                body));
    }
}
