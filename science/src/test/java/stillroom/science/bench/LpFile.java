package stillroom.science.bench;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stillroom.science.blend.Blend;
import stillroom.science.blend.Ingredient;
import stillroom.science.blend.Limit;

/** Writes a blend as a CPLEX LP file, which GLPK and CBC read; only linear costs are written. */
public final class LpFile {
    private LpFile() {}

    public static String of(Blend blend) {
        StringBuilder file = new StringBuilder("Minimize\n cost: ");
        file.append(sum(blend.ingredients().stream()
                .map(ingredient -> ingredient.cost().perFraction())
                .toList()));
        file.append("\nSubject To\n whole: ")
                .append(sum(blend.ingredients().stream().map(each -> 1.0).toList()))
                .append(" = 1\n");
        for (Limit limit : blend.limits()) {
            if (!Double.isInfinite(limit.min())) {
                file.append(" ")
                        .append(limit.name())
                        .append("min: ")
                        .append(sum(limit.values()))
                        .append(" >= ")
                        .append(limit.min())
                        .append('\n');
            }
            if (!Double.isInfinite(limit.max())) {
                file.append(" ")
                        .append(limit.name())
                        .append("max: ")
                        .append(sum(limit.values()))
                        .append(" <= ")
                        .append(limit.max())
                        .append('\n');
            }
        }
        uses(blend, file);
        file.append("Bounds\n");
        for (int j = 0; j < blend.size(); j++) {
            file.append(" 0 <= x")
                    .append(j)
                    .append(" <= ")
                    .append(blend.ingredients().get(j).most())
                    .append('\n');
        }
        if (!blend.useLimits().isEmpty()) {
            file.append("Binaries\n")
                    .append(IntStream.range(0, blend.size())
                            .mapToObj(j -> " y" + j + "\n")
                            .collect(Collectors.joining()));
        }
        return file.append("End\n").toString();
    }

    private static void uses(Blend blend, StringBuilder file) {
        blend.useLimits()
                .forEach(limit -> file.append(" count: ")
                        .append(limit.of().stream()
                                .sorted()
                                .map(j -> "y" + j + "\n")
                                .collect(Collectors.joining(" + ")))
                        .append(" <= ")
                        .append(limit.atMost())
                        .append('\n'));
        for (int j = 0; j < blend.size() && !blend.useLimits().isEmpty(); j++) {
            Ingredient ingredient = blend.ingredients().get(j);
            file.append(" x" + j + " - " + ingredient.most() + " y" + j + " <= 0\n");
            file.append(" x" + j + " - " + ingredient.leastIfUsed() + " y" + j + " >= 0\n");
        }
    }

    private static String sum(List<Double> values) {
        return IntStream.range(0, values.size())
                .filter(j -> values.get(j) != 0)
                .mapToObj(j -> values.get(j) + " x" + j + "\n")
                .collect(Collectors.joining(" + "));
    }
}
