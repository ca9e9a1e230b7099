package stillroom.science.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillroom.science.blend.Blend;
import stillroom.science.blend.BlendAnswer;
import stillroom.science.blend.BlendSolver;
import stillroom.science.blend.GeneratedBlend;

/**
 * Compares generated blends with GLPK and CBC, where these are installed (science/compare-blends.sh): objective and time, all
 * in one run. Times are processor time: of the others for their whole process, of ours for the call, which is made twice; the
 * first call of all runs in a virtual machine that has not yet compiled anything.
 */
public final class BlendComparison {
    private static final int[] MATERIALS = {20, 40, 60, 80, 120, 160, 200, 250, 300, 400};

    private static final java.lang.management.ThreadMXBean CPU =
            java.lang.management.ManagementFactory.getThreadMXBean();
    private final long limitSeconds;

    private BlendComparison(long limitSeconds) {
        this.limitSeconds = limitSeconds;
    }

    /** Arguments: seconds that each solver may take, first and last seed. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        BlendComparison comparison = new BlendComparison(Long.parseLong(arguments[0]));
        System.out.println(
                "materials limits at-most | objective glpk cbc | seconds first again glpk cbc | ratio to the faster");
        for (long seed = Long.parseLong(arguments[1]); seed <= Long.parseLong(arguments[2]); seed++) {
            int materials = MATERIALS[(int) (seed % MATERIALS.length)];
            int properties = arguments.length > 3 ? Integer.parseInt(arguments[3]) : 4 + (int) (seed * 7 % 21);
            comparison.compare(
                    seed % 4 == 3
                            ? GeneratedBlend.linear(seed, materials, properties)
                            : GeneratedBlend.counted(seed, materials, properties, 5 + (int) (seed % 5)));
        }
    }

    private void compare(Blend blend) throws IOException, InterruptedException {
        Path file = Files.createTempFile("blend", ".lp");
        Files.writeString(file, LpFile.of(blend));
        Outside glpk = run(
                List.of(
                        "glpsol",
                        "--lp",
                        file.toString(),
                        "--mipgap",
                        "1e-9",
                        "--tmlim",
                        "" + limitSeconds,
                        "-o",
                        file + ".glpk"),
                Path.of(file + ".glpk"),
                "Objective:\\s+cost = (\\S+)");
        Outside cbc = run(
                List.of(
                        "cbc",
                        file.toString(),
                        "ratio",
                        "1e-9",
                        "allow",
                        "1e-10",
                        "sec",
                        "" + limitSeconds,
                        "solve",
                        "solu",
                        file + ".cbc"),
                Path.of(file + ".cbc"),
                "objective value\\s+(\\S+)");
        Timed first = solve(blend);
        Timed again = solve(blend);
        double faster = Math.min(glpk.seconds(), cbc.seconds());
        System.out.printf(
                Locale.ROOT,
                "%3d %2d %s | %s %.9f %.9f | %.3f %.3f %.3f %.3f | %.2f %.2f %s%n",
                blend.size(),
                blend.limits().size(),
                blend.useLimits().isEmpty() ? "-" : blend.useLimits().get(0).atMost(),
                first.says(),
                glpk.objective(),
                cbc.objective(),
                first.seconds(),
                again.seconds(),
                glpk.seconds(),
                cbc.seconds(),
                first.seconds() / faster,
                again.seconds() / faster,
                again.says());
    }

    private Timed solve(Blend blend) {
        long from = System.nanoTime();
        long cpuFrom = CPU.getCurrentThreadCpuTime();
        BlendAnswer answer =
                BlendSolver.solve(blend, progress -> System.nanoTime() - from > limitSeconds * 1_000_000_000L);
        double seconds = (CPU.getCurrentThreadCpuTime() - cpuFrom) / 1e9;
        String says = answer.match(
                optimal -> String.format(Locale.ROOT, "%.9f", optimal.objective()),
                stopped -> String.format(Locale.ROOT, "stopped:%.6f>%.6f", stopped.objective(), stopped.bound()),
                infeasible -> "infeasible");
        return new Timed(says + "(" + answer.nodes() + ")", seconds);
    }

    private record Timed(String says, double seconds) {}

    private record Outside(double objective, double seconds) {}

    private Outside run(List<String> command, Path output, String pattern) throws IOException, InterruptedException {
        long from = System.nanoTime();
        Path cpu = Files.createTempFile("cpu", ".txt");
        List<String> timed = new java.util.ArrayList<>(
                List.of("bash", "-c", "TIMEFORMAT='%U %S'; { time \"$@\" >/dev/null 2>&1; } 2>" + cpu, "time"));
        timed.addAll(command);
        Process process = new ProcessBuilder(timed)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        if (!process.waitFor(2 * limitSeconds + 10, TimeUnit.SECONDS)) {
            process.destroyForcibly();
        }
        String[] said = Files.readString(cpu, StandardCharsets.UTF_8).trim().split(" ");
        double seconds = said.length == 2
                ? Double.parseDouble(said[0]) + Double.parseDouble(said[1])
                : (System.nanoTime() - from) / 1e9;
        if (!Files.exists(output)) {
            return new Outside(Double.NaN, seconds);
        }
        Matcher found = Pattern.compile(pattern).matcher(Files.readString(output, StandardCharsets.UTF_8));
        return new Outside(found.find() ? Double.parseDouble(found.group(1)) : Double.NaN, seconds);
    }
}
