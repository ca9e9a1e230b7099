package stillroom.science.blend;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The blend of 60 materials with 24 limits whose optimum general-purpose engines have given. */
final class PeerBlend {
    private PeerBlend() {}

    /** @param atMost 0: any number, and no least doses */
    static Blend read(int atMost) throws IOException {
        List<String[]> materials = rows("materials.csv");
        List<String> columns = List.of(materials.remove(0));
        List<Ingredient> ingredients = new ArrayList<>();
        Set<Integer> all = new HashSet<>();
        for (String[] row : materials) {
            double least = atMost > 0 ? Double.parseDouble(row[3]) : 0;
            Cost cost = Cost.perFraction(Double.parseDouble(row[1]));
            all.add(ingredients.size());
            ingredients.add(new Ingredient(row[0], least, Double.parseDouble(row[2]), false, cost));
        }
        List<Limit> limits = new ArrayList<>();
        for (String[] row : rows("limits.csv").subList(1, 25)) {
            int column = columns.indexOf(row[0]);
            List<Double> values = materials.stream()
                    .map(each -> Double.parseDouble(each[column]))
                    .toList();
            limits.add(new Limit(row[0], values, bound(row[1], -1), bound(row[2], 1)));
        }
        return new Blend(ingredients, limits, atMost > 0 ? List.of(new UseLimit("count", all, atMost)) : List.of());
    }

    private static double bound(String typed, int sign) {
        return typed.isEmpty() ? sign * Double.POSITIVE_INFINITY : Double.parseDouble(typed);
    }

    private static List<String[]> rows(String file) throws IOException {
        try (InputStream in = PeerBlend.class.getResourceAsStream("/engines/blend/" + file)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return new ArrayList<>(text.lines().map(line -> line.split(",", -1)).toList());
        }
    }
}
