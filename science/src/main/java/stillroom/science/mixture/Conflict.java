package stillroom.science.mixture;

import java.util.ArrayList;
import java.util.List;

/** Why a region is empty: bounds and constraints that exclude each other, none of which could be left out. */
final class Conflict {
    private Conflict() {}

    static List<String> smallest(MixtureRegion region) {
        List<Double> lower = new ArrayList<>(region.lower());
        List<Side> sides = new ArrayList<>(Side.of(new MixtureRegion(lower, region.upper(), region.constraints())));
        for (int i = 0; i < lower.size(); i++) {
            double low = lower.get(i);
            lower.set(i, 0.0);
            if (!empty(region, lower, sides)) {
                lower.set(i, low);
            }
        }
        for (Side side : List.copyOf(sides)) {
            sides.remove(side);
            if (!empty(region, lower, sides)) {
                sides.add(side);
            }
        }
        List<String> words = new ArrayList<>();
        for (int i = 0; i < lower.size(); i++) {
            if (lower.get(i) > 0) {
                words.add("component " + (i + 1) + " at least " + MixtureRegion.percent(lower.get(i)));
            }
        }
        sides.forEach(side -> words.add(side.words()));
        return words;
    }

    private static boolean empty(MixtureRegion region, List<Double> lower, List<Side> sides) {
        return Clipping.corners(new MixtureRegion(lower, region.upper(), region.constraints()), sides)
                .isEmpty();
    }
}
