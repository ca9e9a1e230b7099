package stillroom.ledger.bench;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.IntFunction;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchStage;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.material.Lot;
import stillroom.formulary.quantity.Grams;
import stillroom.ledger.Ledger;
import stillroom.ledger.batch.BatchQuery;
import stillroom.ledger.store.Database;
import stillroom.ledger.trace.TraceStart;

/** How long the questions of the pages take in a large workshop. Arguments: batches, weighings per batch. */
final class WorkshopBenchmark {
    private static final int WARM_UP = 50;
    private static final int RUNS = 300;
    private static final PrintStream OUT = System.out;

    private final Ledger ledger;
    private final int batches;
    private final int lots;
    private final Random random = new Random(2);

    private WorkshopBenchmark(Ledger ledger, int batches, int lots) {
        this.ledger = ledger;
        this.batches = batches;
        this.lots = lots;
    }

    public static void main(String[] arguments) throws Exception {
        int batches = Integer.parseInt(arguments[0]);
        int weighings = Integer.parseInt(arguments[1]);
        Path folder = Files.createTempDirectory("stillroom-bench");
        try {
            Instant start = Instant.now();
            int lots = generated(folder, batches, weighings);
            OUT.printf(
                    "%,d batches, %,d weighings, %,d lots: written in %d s, file %,d MB%n",
                    batches,
                    (long) batches * weighings,
                    lots,
                    Duration.between(start, Instant.now()).toSeconds(),
                    Files.size(folder.resolve(Database.FILE_NAME)) >> 20);
            measure(folder, batches, lots);
        } finally {
            delete(folder);
        }
    }

    private static int generated(Path folder, int batches, int weighings) throws Exception {
        try (Ledger ledger = Ledger.open(folder)) {
            ledger.products().add("Toner", Brief.of(ProductType.TONER), "");
            ledger.together(() -> {
                for (int i = 0; i < Math.max(weighings + 1, batches * weighings / 300); i++) {
                    ledger.lots().add(lot(i, weighings));
                }
                return true;
            });
        }
        return LargeWorkshop.write(folder.resolve(Database.FILE_NAME), batches, weighings);
    }

    private static Lot lot(int i, int weighings) {
        return new Lot(
                "L" + i,
                "material-" + i % weighings,
                "",
                "",
                Grams.of("50000000"),
                LocalDate.EPOCH,
                Optional.empty(),
                Optional.of(LocalDate.EPOCH.plusDays(i)),
                Optional.empty(),
                Lot.State.RELEASED,
                "");
    }

    private static void measure(Path folder, int batches, int lots) {
        long before = System.nanoTime();
        try (Ledger ledger = Ledger.open(folder)) {
            OUT.printf(
                    "%-58s %8.2f ms%n", "open an existing ledger (classes loaded)", (System.nanoTime() - before) / 1e6);
            WorkshopBenchmark benchmark = new WorkshopBenchmark(ledger, batches, lots);
            benchmark.check();
            benchmark.all();
        }
    }

    /** What was written around the ledger must be what the ledger would have written. */
    private void check() {
        for (int i = 0; i < 20; i++) {
            ledger.batches().firstAltered(someBatch()).ifPresent(entry -> {
                throw new IllegalStateException("the generator writes a chain that does not fit, entry " + entry);
            });
        }
    }

    private void all() {
        BatchQuery open = new BatchQuery(Set.of(BatchStage.PLANNED, BatchStage.IN_WORK), Optional.empty(), "");
        BatchQuery code = new BatchQuery(Set.of(), Optional.empty(), "B1");
        time("list of batches, a page of 50, first", i -> ledger.batches().page(BatchQuery.ALL, 0, 50));
        time(
                "list of batches, a page of 50, anywhere",
                i -> ledger.batches().page(BatchQuery.ALL, random.nextInt(batches), 50));
        time("list of batches in work", i -> ledger.batches().page(open, 0, 50));
        time("list of batches by beginning of the code", i -> ledger.batches().page(code, 0, 50));
        time("unfinished batches (start page)", i -> ledger.batches().unfinished());
        time("log of a batch", i -> ledger.batches().log(someBatch()));
        time("lots of a material with stock", i -> ledger.lots().ofMaterial("material-3"));
        time("trace: all batches that hold a lot", i -> ledger.batches().holding("L" + random.nextInt(lots)));
        time(
                "trace and impact: batches, premixes and units of a lot",
                i -> ledger.traces().reach(TraceStart.of(TraceStart.Kind.LOT, "L" + random.nextInt(lots))));
        time(
                "trace and impact: a lot in premixes of premixes",
                i -> ledger.traces()
                        .reach(TraceStart.of(TraceStart.Kind.LOT, "L" + (100 * (1 + random.nextInt(lots / 100)) - 2))));
        time("trace back from a batch to its lots", i -> ledger.traces().sourcesOfBatch("B" + someBatch()));
        time(
                "append a weighing, on disk",
                i -> ledger.batches().append(batches, "bench" + i, Instant.EPOCH, "Ana", new BatchEvent.Noted("x")));
    }

    private int someBatch() {
        return 1 + random.nextInt(batches);
    }

    private void time(String what, IntFunction<Object> question) {
        double[] milliseconds = new double[RUNS];
        double[] processor = new double[RUNS];
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        for (int i = 0; i < WARM_UP + RUNS; i++) {
            long before = System.nanoTime();
            long worked = threads.getCurrentThreadCpuTime();
            Object answer = question.apply(i);
            double took = (System.nanoTime() - before) / 1e6;
            processor[Math.max(0, i - WARM_UP)] = (threads.getCurrentThreadCpuTime() - worked) / 1e6;
            if (answer == null) {
                throw new IllegalStateException("no answer");
            }
            milliseconds[Math.max(0, i - WARM_UP)] = took;
        }
        Arrays.sort(milliseconds);
        Arrays.sort(processor);
        OUT.printf(
                "%-58s median %8.2f, 95 %% %8.2f, most %8.2f ms; processor time median %8.2f ms%n",
                what,
                milliseconds[RUNS / 2],
                milliseconds[RUNS * 95 / 100],
                milliseconds[RUNS - 1],
                processor[RUNS / 2]);
    }

    private static void delete(Path folder) throws Exception {
        try (var files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }
}
