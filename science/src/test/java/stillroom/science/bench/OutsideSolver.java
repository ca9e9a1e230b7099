package stillroom.science.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** GLPK and CBC as programs of their own, asked about an LP file. */
enum OutsideSolver {
    GLPK {
        @Override
        List<String> command(Path problem, long seconds) {
            return List.of(
                    "glpsol",
                    "--lp",
                    problem.toString(),
                    "--mipgap",
                    "1e-9",
                    "--tmlim",
                    Long.toString(seconds),
                    "-w",
                    solution(problem).toString());
        }

        /** Lines "s mip ROWS COLUMNS STATUS OBJECTIVE" or "s bas ROWS COLUMNS PRIMAL DUAL OBJECTIVE"; "j COLUMN [STATUS] VALUE ...". */
        @Override
        Said read(List<String> lines, int materials) {
            Said said = Said.NOTHING;
            List<Integer> used = new ArrayList<>();
            for (String line : lines) {
                String[] words = line.trim().split("\\s+");
                if (words[0].equals("s")) {
                    boolean mixed = words[1].equals("mip");
                    String status = mixed ? words[4] : words[4] + words[5];
                    double objective = Double.parseDouble(words[mixed ? 5 : 6]);
                    said = switch (status) {
                        case "o", "ff" -> new Said(Verdict.OPTIMAL, objective, used);
                        case "n", "nf", "nn", "nu" -> new Said(Verdict.INFEASIBLE, Double.NaN, used);
                        default -> new Said(Verdict.OUT_OF_TIME, objective, used);
                    };
                } else if (words[0].equals("j") && Integer.parseInt(words[1]) <= materials) {
                    double value = Double.parseDouble(words[words.length > 3 ? 3 : 2]);
                    if (value > 1e-7) {
                        used.add(Integer.parseInt(words[1]));
                    }
                }
            }
            return said;
        }
    },
    CBC {
        @Override
        List<String> command(Path problem, long seconds) {
            return List.of(
                    "cbc",
                    problem.toString(),
                    "ratio",
                    "1e-9",
                    "allow",
                    "1e-10",
                    "sec",
                    Long.toString(seconds),
                    "solve",
                    "solu",
                    solution(problem).toString());
        }

        /** First line "Optimal - objective value 1.23"; then "NUMBER NAME VALUE REDUCED". */
        @Override
        Said read(List<String> lines, int materials) {
            String first = lines.isEmpty() ? "" : lines.get(0);
            String[] words = first.trim().split("\\s+");
            double objective =
                    first.contains("objective value") ? Double.parseDouble(words[words.length - 1]) : Double.NaN;
            Verdict verdict = first.startsWith("Optimal")
                    ? Verdict.OPTIMAL
                    : first.startsWith("Infeasible") || first.startsWith("Integer infeasible")
                            ? Verdict.INFEASIBLE
                            : Verdict.OUT_OF_TIME;
            return new Said(verdict, verdict == Verdict.INFEASIBLE ? Double.NaN : objective, List.of());
        }
    };

    enum Verdict {
        OPTIMAL,
        INFEASIBLE,
        OUT_OF_TIME
    }

    /** @param used numbers of the materials used, from 1; only GLPK's are read */
    record Said(Verdict verdict, double objective, List<Integer> used) {
        static final Said NOTHING = new Said(Verdict.OUT_OF_TIME, Double.NaN, List.of());
    }

    /** @param seconds of processor time of the whole process */
    record Timed(Said said, double seconds) {}

    abstract List<String> command(Path problem, long seconds);

    abstract Said read(List<String> lines, int materials);

    Path solution(Path problem) {
        return Path.of(problem + "." + name());
    }

    Timed ask(Path problem, int materials, long limitSeconds) throws IOException, InterruptedException {
        long from = System.nanoTime();
        Path cpu = Files.createTempFile("cpu", ".txt");
        List<String> timed = new ArrayList<>(
                List.of("bash", "-c", "TIMEFORMAT='%U %S'; { time \"$@\" >/dev/null 2>&1; } 2>" + cpu, "time"));
        timed.addAll(command(problem, limitSeconds));
        Process process = new ProcessBuilder(timed)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        if (!process.waitFor(2 * limitSeconds + 10, TimeUnit.SECONDS)) {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        }
        String[] said = Files.readString(cpu, StandardCharsets.UTF_8).trim().split(" ");
        double seconds = said.length == 2
                ? Double.parseDouble(said[0]) + Double.parseDouble(said[1])
                : (System.nanoTime() - from) / 1e9;
        Files.delete(cpu);
        if (!Files.exists(solution(problem))) {
            return new Timed(Said.NOTHING, seconds);
        }
        Said answer = read(Files.readAllLines(solution(problem)), materials);
        Files.delete(solution(problem));
        return new Timed(answer, seconds);
    }
}
