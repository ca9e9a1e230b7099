package stillroom.desk.law;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import stillroom.formulary.change.LawComparison;
import stillroom.formulary.judgement.Evaluator;
import stillroom.ledger.Ledger;

/**
 * How long it takes to hold the law of two days against each other for 10,000 stored formulas of 15 to 40 lines, on two
 * threads, cold and again. Run by {@code desk/bench.sh law}; it asks for at most 20 s.
 */
public final class SweepBenchmark {
    private static final int FORMULAS = 10_000;
    private static final Sweep.Wish WISH =
            new Sweep.Wish(LocalDate.of(2026, 11, 25), LocalDate.of(2028, 8, 1), Sweep.Which.EVERY);

    private SweepBenchmark() {}

    public static void main(String[] arguments) throws IOException {
        int formulas = arguments.length > 0 ? Integer.parseInt(arguments[0]) : FORMULAS;
        Path folder = Files.createTempDirectory("stillroom-law");
        try (Ledger ledger = Ledger.open(folder)) {
            long begun = System.nanoTime();
            ManyFormulas.store(ledger, formulas, 1);
            System.out.printf("stored %d formulas in %.1f s%n", formulas, (System.nanoTime() - begun) / 1e9);
            LawComparison comparison = new LawComparison(Evaluator.standard());
            for (String run : new String[] {"cold", "again"}) {
                long cpu = cpuNanos();
                Sweep sweep = Sweep.begin(ledger, comparison, WISH);
                boolean ended = sweep.await(600);
                System.out.printf(
                        "%s: %s, %d formulas on %d threads in %.1f s (%.1f s of processor time); something changes for %d, %d could not be judged; heap %d MB%n",
                        run,
                        ended ? "ended" : "not ended",
                        sweep.formulas(),
                        Sweep.THREADS,
                        sweep.seconds(),
                        (cpuNanos() - cpu) / 1e9,
                        sweep.changed().size(),
                        sweep.failed().size(),
                        (Runtime.getRuntime().totalMemory()
                                        - Runtime.getRuntime().freeMemory())
                                >> 20);
            }
        }
    }

    /** Of this program, on all cores: half of it is what two free cores need. */
    private static long cpuNanos() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }
}
