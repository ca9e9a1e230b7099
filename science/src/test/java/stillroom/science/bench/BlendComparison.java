package stillroom.science.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import stillroom.science.bench.OutsideSolver.Verdict;
import stillroom.science.blend.Blend;
import stillroom.science.blend.BlendAnswer;
import stillroom.science.blend.BlendSolver;
import stillroom.science.blend.GeneratedBlend;
import stillroom.science.blend.GeneratedBlend.Shape;

/**
 * Compares generated blends with GLPK and CBC, where these are installed (science/compare-blends.sh): objective and time, all
 * in one run. Times are processor time: of the others for their whole process, of ours for the call, which is made twice; the
 * first call of all runs in a virtual machine that has not yet compiled anything.
 */
public final class BlendComparison {
    private static final int[] MATERIALS = {20, 40, 60, 80, 120, 160, 200, 250, 300, 400};
    /** Relative to an objective above 1. */
    private static final double SAME = 1e-6;

    private static final java.lang.management.ThreadMXBean CPU =
            java.lang.management.ManagementFactory.getThreadMXBean();
    private final long limitSeconds;
    private final List<Double> firstRatios = new ArrayList<>();
    private final List<Double> ratios = new ArrayList<>();
    private int different;
    private int problems;
    private int unsolved;
    private int onlyOurs;

    private BlendComparison(long limitSeconds) {
        this.limitSeconds = limitSeconds;
    }

    /** Arguments: seconds that each solver may take, first and last seed, and a shape (or all) and a number of limits. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        BlendComparison comparison = new BlendComparison(Long.parseLong(arguments[0]));
        String shapes = arguments.length > 3 ? arguments[3] : "USUAL";
        System.out.println("shape,seed,materials,limits,at_most,objective,glpk,cbc,nodes,first,again,glpk_s,cbc_s,"
                + "first_ratio,ratio,checksum,used,remark");
        for (Shape shape : Shape.values()) {
            for (long seed = Long.parseLong(arguments[1]); seed <= Long.parseLong(arguments[2]); seed++) {
                if (shapes.equals("all") || shapes.equals(shape.name())) {
                    int properties = arguments.length > 4 ? Integer.parseInt(arguments[4]) : 4 + (int) (seed * 7 % 21);
                    comparison.compare(
                            new Problem(shape, seed, MATERIALS[(int) (seed % MATERIALS.length)], properties));
                }
            }
        }
        comparison.sumUp();
    }

    private record Problem(Shape shape, long seed, int materials, int properties) {
        Blend blend() {
            return seed % 4 == 3
                    ? GeneratedBlend.linear(shape, seed, materials, properties)
                    : GeneratedBlend.counted(shape, seed, materials, properties, atMost());
        }

        int atMost() {
            return 5 + (int) (seed % 5);
        }
    }

    private void compare(Problem problem) throws IOException, InterruptedException {
        Blend blend = problem.blend();
        Path file = Files.createTempFile("blend", ".lp");
        String text = LpFile.of(blend);
        Files.writeString(file, text);
        OutsideSolver.Timed glpk = OutsideSolver.GLPK.ask(file, blend.size(), limitSeconds);
        OutsideSolver.Timed cbc = OutsideSolver.CBC.ask(file, blend.size(), limitSeconds);
        Files.delete(file);
        Ours first = solve(blend);
        Ours again = solve(blend);
        double faster = Math.min(proven(glpk), proven(cbc));
        problems++;
        onlyOurs += Double.isInfinite(faster) && !again.says().equals("stopped") ? 1 : 0;
        String remark = remark(again, glpk.said()) + remark(again, cbc.said());
        different += remark.isEmpty() ? 0 : 1;
        if (!again.says().equals("stopped") && !Double.isInfinite(faster)) {
            firstRatios.add(first.seconds() / faster);
            ratios.add(again.seconds() / faster);
        } else if (again.says().equals("stopped")) {
            unsolved++;
        }
        System.out.printf(
                Locale.ROOT,
                "%s,%d,%d,%d,%s,%s,%s,%s,%d,%.4f,%.4f,%.3f,%.3f,%.2f,%.2f,%s,%s,%s%n",
                problem.shape(),
                problem.seed(),
                problem.materials(),
                problem.properties(),
                blend.useLimits().isEmpty() ? "" : problem.atMost(),
                again.says(),
                says(glpk.said()),
                says(cbc.said()),
                again.nodes(),
                first.seconds(),
                again.seconds(),
                glpk.seconds(),
                cbc.seconds(),
                first.seconds() / faster,
                again.seconds() / faster,
                Checksum.of(text),
                glpk.said().used().stream().map(String::valueOf).collect(Collectors.joining(" ")),
                remark);
    }

    /** One that was stopped has not solved it, and counts as slower than any. */
    private static double proven(OutsideSolver.Timed timed) {
        return timed.said().verdict() == Verdict.OUT_OF_TIME ? Double.POSITIVE_INFINITY : timed.seconds();
    }

    private static String says(OutsideSolver.Said said) {
        return switch (said.verdict()) {
            case OPTIMAL -> String.format(Locale.ROOT, "%.12g", said.objective());
            case INFEASIBLE -> "infeasible";
            case OUT_OF_TIME -> "stopped " + said.objective();
        };
    }

    /** What is different from a proven answer of another solver. */
    private static String remark(Ours ours, OutsideSolver.Said other) {
        if (ours.says().equals("stopped")) {
            return "";
        }
        return switch (other.verdict()) {
            case OUT_OF_TIME -> "";
            case INFEASIBLE -> ours.says().equals("infeasible") ? "" : "not infeasible ";
            case OPTIMAL ->
                Math.abs(ours.objective() - other.objective()) <= SAME * Math.max(1, Math.abs(other.objective()))
                        ? ""
                        : "differs ";
        };
    }

    private void sumUp() {
        System.out.printf(
                Locale.ROOT,
                "%d problems: %d different from a proven answer, %d that ours did not solve in time, %d that only ours solved.%n"
                        + "Time as a ratio to the faster of GLPK and CBC: median %.2f, at most %.2f (first call %.2f, %.2f)%n",
                problems,
                different,
                unsolved,
                onlyOurs,
                median(ratios),
                Collections.max(ratios),
                median(firstRatios),
                Collections.max(firstRatios));
    }

    private static double median(List<Double> of) {
        return of.stream().sorted().toList().get(of.size() / 2);
    }

    private Ours solve(Blend blend) {
        long from = System.nanoTime();
        long cpuFrom = CPU.getCurrentThreadCpuTime();
        BlendAnswer answer =
                BlendSolver.solve(blend, progress -> System.nanoTime() - from > limitSeconds * 1_000_000_000L);
        double seconds = (CPU.getCurrentThreadCpuTime() - cpuFrom) / 1e9;
        return answer.match(
                optimal -> new Ours(
                        String.format(Locale.ROOT, "%.12g", optimal.objective()),
                        optimal.objective(),
                        answer.nodes(),
                        seconds),
                stopped -> new Ours("stopped", stopped.objective(), answer.nodes(), seconds),
                infeasible -> new Ours("infeasible", Double.NaN, answer.nodes(), seconds));
    }

    private record Ours(String says, double objective, long nodes, double seconds) {}
}
