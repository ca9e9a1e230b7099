package stillroom.ledger.bench;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchStage;
import stillroom.formulary.batch.Chain;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.concern.Concern;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.json.Json;
import stillroom.ledger.store.Micrograms;

/**
 * Writes batches with their weighings straight into the tables, as appending each through the ledger would take hours: same
 * texts, same hashes, same sums. Every weighing is of one of the lots; a lot lasts for some 300 weighings.
 */
final class LargeWorkshop {
    private static final int WEIGHINGS_PER_LOT = 300;
    private static final int UNFINISHED = 20;

    private final Random random = new Random(1);
    private final Connection connection;
    private final int batches;
    private final int weighings;
    private final int lots;
    private final PreparedStatement batchRow;
    private final PreparedStatement entryRow;
    private final PreparedStatement useRow;
    private final PreparedStatement touchRow;
    private final PreparedStatement originRow;

    private LargeWorkshop(Connection connection, int batches, int weighings) throws SQLException {
        this.connection = connection;
        this.batches = batches;
        this.weighings = weighings;
        this.lots = Math.max(weighings + 1, batches * weighings / WEIGHINGS_PER_LOT);
        batchRow = connection.prepareStatement("""
                insert into batch (id, code, product_id, version, opened_on, body, stage, entries, last_ms, head_hash)
                values (?, ?, 1, null, ?, ?, ?, ?, ?, ?)""");
        entryRow = connection.prepareStatement("""
                insert into log_entry (batch_id, number, request_id, at_ms, kind, body, hash)
                values (?, ?, ?, ?, ?, ?, ?)""");
        useRow = connection.prepareStatement("""
                insert into lot_use (batch_id, entry, part, lot_code, material_key, mass_ug, by_hand, struck)
                values (?, ?, 1, ?, ?, ?, 1, 0)""");
        touchRow = connection.prepareStatement(
                "insert into batch_touch (kind, name, batch_id, units) values (?, ?, ?, 0)");
        originRow = connection.prepareStatement(
                "insert into lot_origin (lot_code, number, from_lot, mass_ug) values (?, 1, ?, 1000000)");
    }

    /** Fills the file of a ledger that has one product and is closed. Returns the number of lots, named L0, L1 ... */
    static int write(Path file, int batches, int weighingsPerBatch) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute("pragma synchronous = off");
            connection.setAutoCommit(false);
            LargeWorkshop workshop = new LargeWorkshop(connection, batches, weighingsPerBatch);
            for (int id = 1; id <= batches; id++) {
                workshop.batch(id);
            }
            workshop.lots();
            workshop.origins();
            connection.commit();
            return workshop.lots;
        }
    }

    private void batch(int id) throws SQLException {
        LocalDate day = LocalDate.of(2000, 1, 1).plusDays(id / 20);
        Batch batch = new Batch(id, "B" + id, 1, Optional.empty(), day);
        boolean finished = id <= batches - UNFINISHED;
        List<LogEntry> log = log(id, day.atTime(8, 0).toInstant(ZoneOffset.UTC), finished);
        String body = Json.write(batch);
        String hash = Chain.link(Chain.START, body + "\n");
        List<Object[]> rows = new ArrayList<>();
        for (LogEntry entry : log) {
            String text = Json.write(entry);
            hash = Chain.link(hash, text);
            rows.add(new Object[] {
                id,
                entry.number(),
                "r" + entry.number(),
                entry.at().toEpochMilli(),
                Json.kind(entry.event()),
                text,
                hash
            });
        }
        LogEntry last = log.get(log.size() - 1);
        run(
                batchRow,
                id,
                batch.code(),
                day.toString(),
                body,
                finished ? BatchStage.RELEASED.name() : BatchStage.IN_WORK.name(),
                log.size(),
                last.at().toEpochMilli(),
                hash);
        for (Object[] row : rows) {
            run(entryRow, row);
        }
        uses(id, log);
        touches(id);
        if (id % 2000 == 0) {
            connection.commit();
        }
    }

    private List<LogEntry> log(int id, Instant start, boolean finished) {
        List<LogEntry> log = new ArrayList<>();
        add(log, start, new BatchEvent.Begun(""));
        for (int i = 0; i < weighings; i++) {
            add(log, start, weighing(id, i));
        }
        if (finished) {
            Grams all = Grams.of("1000");
            add(log, start, new BatchEvent.Filled("beaker", "bottle", 10, all, Optional.empty(), ""));
            add(log, start, new BatchEvent.Decided(BatchEvent.Decision.RELEASED, "Ana", "", List.of()));
            add(log, start, sold(id, start));
        }
        return log;
    }

    private static BatchEvent sold(int id, Instant start) {
        LocalDate day = start.atZone(ZoneOffset.UTC).toLocalDate();
        return new BatchEvent.Concerned(new Concern.Moved(Concern.Move.SALE, 7, day, "Shop " + id % 50, ""));
    }

    private static void add(List<LogEntry> log, Instant start, BatchEvent event) {
        log.add(new LogEntry(log.size() + 1, start.plusSeconds(90L * log.size()), "Ana", event));
    }

    /** Lots are used up one after another, each over neighbouring batches, as on a shelf. */
    private BatchEvent.Poured weighing(int id, int line) {
        int lot = (int) ((long) id * lots / (batches + 1) / weighings * weighings + line) % lots;
        return new BatchEvent.Poured(
                "beaker",
                Optional.of("l" + line),
                "material-" + line,
                Optional.of("L" + lot),
                Grams.of((1 + random.nextInt(100_000)) + "." + random.nextInt(100)),
                BatchEvent.Purpose.LINE,
                "bench",
                "",
                "");
    }

    private void uses(int id, List<LogEntry> log) throws SQLException {
        for (LogEntry entry : log) {
            if (entry.event() instanceof BatchEvent.Poured poured) {
                run(
                        useRow,
                        id,
                        entry.number(),
                        poured.lot().orElseThrow(),
                        poured.materialKey(),
                        Micrograms.of(poured.mass()));
            }
        }
    }

    /** As every entry of these logs would have left them. */
    private void touches(int id) throws SQLException {
        run(touchRow, "vessel", "beaker", id);
        run(touchRow, "balance", "bench", id);
        run(touchRow, "person", "ana", id);
    }

    /** Every hundredth lot was made of the one before it, and every thousandth of that, as premixes of premixes are. */
    private void origins() throws SQLException {
        for (int lot = 100; lot < lots; lot += 100) {
            run(originRow, "L" + lot, "L" + (lot - 1));
            run(originRow, "L" + (lot - 1), "L" + (lot - 2));
        }
    }

    private void lots() throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate("""
                    update lot set poured_ug =
                      (select coalesce(sum(mass_ug), 0) from lot_use where lot_code = lot.code and struck = 0)""");
        }
    }

    private static void run(PreparedStatement statement, Object... values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            statement.setObject(i + 1, values[i]);
        }
        statement.executeUpdate();
    }
}
