package stillroom.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.quantity.Grams;

/** A process that is killed in the midst of weighing loses no entry that it has confirmed. */
final class CrashTest {
    private static final int KILLS = 50;
    private static final int SIDE_BY_SIDE = 2;
    private static final long SEED = 1789;

    @TempDir
    Path folder;

    @Test
    void aKilledProcessLosesNoConfirmedEntry() throws Exception {
        List<Callable<Integer>> workshops = new ArrayList<>();
        for (int i = 0; i < SIDE_BY_SIDE; i++) {
            int number = i;
            workshops.add(() -> killed(folder.resolve("workshop-" + number), new Random(SEED + number)));
        }
        ExecutorService hands = Executors.newFixedThreadPool(SIDE_BY_SIDE);
        int confirmed = 0;
        for (Future<Integer> workshop : hands.invokeAll(workshops)) {
            confirmed += workshop.get();
        }
        hands.shutdown();
        assertThat(confirmed).as("entries that were at stake").isGreaterThan(KILLS);
    }

    /** Kills one process after the other in one workshop; returns how many entries they had confirmed. */
    private static int killed(Path home, Random random) throws Exception {
        long product = prepared(home);
        int confirmed = 0;
        for (int kill = 0; kill < KILLS / SIDE_BY_SIDE; kill++) {
            confirmed += survived(home, product, "kill-" + kill, random.nextInt(60_000));
        }
        return confirmed;
    }

    private static long prepared(Path home) {
        try (Ledger ledger = Workbench.open(home)) {
            ledger.lots().add(Workbench.lot("G1", "glycerin", "1000000"));
            return Workbench.product(ledger).id();
        }
    }

    private static int survived(Path home, long product, String code, int microsecondsToLive) throws Exception {
        List<Integer> confirmed = confirmedUntilKilled(home, product, code, microsecondsToLive);
        try (Ledger ledger = Workbench.open(home)) {
            long batch = ledger.batches().byCode(code).orElseThrow().id();
            List<LogEntry> log = ledger.batches().log(batch);
            assertThat(log).extracting(LogEntry::number).startsWith(confirmed.toArray(Integer[]::new));
            assertThat(log.size()).as("at most the one under way besides").isLessThanOrEqualTo(confirmed.size() + 1);
            assertThat(ledger.batches().firstAltered(batch)).isEmpty();
            assertStockFits(ledger);
        }
        return confirmed.size();
    }

    private static void assertStockFits(Ledger ledger) {
        List<Grams> poured =
                ledger.batches().holding("G1").stream().map(use -> use.mass()).toList();
        assertThat(ledger.lots().stock("G1").orElseThrow().poured()).isEqualTo(Grams.sum(poured));
    }

    private static List<Integer> confirmedUntilKilled(Path home, long product, String code, int microsecondsToLive)
            throws Exception {
        Process process = weighing(home, product, code);
        List<Integer> confirmed = new ArrayList<>();
        try (BufferedReader lines = process.inputReader(StandardCharsets.UTF_8)) {
            confirmed.add(Integer.valueOf(lines.readLine()));
            TimeUnit.MICROSECONDS.sleep(microsecondsToLive);
            // Through the handle: the process itself would close its output, and what it said last with it.
            process.toHandle().destroyForcibly();
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                confirmed.add(Integer.valueOf(line));
            }
        }
        assertThat(process.waitFor()).as("ended by SIGKILL").isEqualTo(128 + 9);
        return confirmed;
    }

    private static Process weighing(Path home, long product, String code) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        WeighingUntilKilled.class.getName(),
                        home.toString(),
                        Long.toString(product),
                        code)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }
}
