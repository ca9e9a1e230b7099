package stillroom.science.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import stillroom.science.mixture.Polytope;

/** Directions in which a mixture can move within its region, and how far. */
final class Walk {
    private static final int MOST_CORNERS = 14;
    private static final double NOWHERE = 1e-11;
    private static final double FLAT = 1e-14;

    private final Polytope region;
    private final List<double[]> corners;
    private final SplittableRandom random;

    Walk(Polytope region, SplittableRandom random) {
        this.region = region;
        this.corners = region.vertices();
        this.random = random;
    }

    /** A straight way from one end to the other. */
    record Way(double[] from, double[] to) {
        double[] at(double place, int length) {
            double[] point = new double[length];
            for (int i = 0; i < from.length; i++) {
                point[i] = (1 - place) * from[i] + place * to[i];
            }
            return point;
        }
    }

    /** Where to: towards a corner, or along a fixed direction. */
    record Aim(double[] goal, boolean corner) {}

    /** Aims worth trying from a mixture: along its own face, exchanges of two components, and towards some corners. */
    List<Aim> aims(double[] mixture) {
        List<Aim> aims = new ArrayList<>();
        long face = region.sidesAt(mixture);
        List<double[]> goals = new ArrayList<>();
        for (int c = 0; c < corners.size(); c++) {
            if ((region.sides(c) & face) == face) {
                goals.add(corners.get(c));
            }
        }
        some(goals).forEach(goal -> aims.add(new Aim(goal, true)));
        for (int i = 0; i < mixture.length; i++) {
            for (int k = i + 1; k < mixture.length; k++) {
                double[] direction = new double[mixture.length];
                direction[i] = 1;
                direction[k] = -1;
                aims.add(new Aim(direction, false));
            }
        }
        if (goals.size() < corners.size()) {
            some(corners).forEach(goal -> aims.add(new Aim(goal, true)));
        }
        return aims;
    }

    /** The whole straight way through a mixture, or none if there is no room. */
    Optional<Way> way(double[] mixture, Aim aim) {
        double[] direction = aim.corner() ? minus(aim.goal(), mixture) : aim.goal();
        double size = 0;
        for (double one : direction) {
            size = Math.max(size, Math.abs(one));
        }
        if (size < NOWHERE) {
            return Optional.empty();
        }
        double forth = region.reach(mixture, direction);
        double back = region.reach(mixture, minus(new double[direction.length], direction));
        return (forth + back) * size > NOWHERE
                ? Optional.of(new Way(step(mixture, direction, -back), step(mixture, direction, forth)))
                : Optional.empty();
    }

    /** The steepest ways up from a mixture, measured by what they could gain to their ends if they stayed as steep. */
    List<Way> steepest(double[] mixture, double[] slopes, int most) {
        record Rising(Way way, double gain) {}
        List<Rising> rising = new ArrayList<>();
        for (Aim aim : aims(mixture)) {
            double[] direction = aim.corner() ? minus(aim.goal(), mixture) : aim.goal();
            double slope = Kernel.dot(slopes, direction);
            double room = region.reach(mixture, slope > 0 ? direction : minus(new double[direction.length], direction));
            if (Math.abs(slope) * room > FLAT) {
                way(mixture, aim).ifPresent(way -> rising.add(new Rising(way, Math.abs(slope) * room)));
            }
        }
        rising.sort(Comparator.comparingDouble(Rising::gain).reversed());
        return rising.stream().limit(most).map(Rising::way).toList();
    }

    private List<double[]> some(List<double[]> all) {
        if (all.size() <= MOST_CORNERS) {
            return all;
        }
        List<double[]> some = new ArrayList<>();
        for (int k = 0; k < MOST_CORNERS / 2; k++) {
            some.add(all.get(random.nextInt(all.size())));
        }
        return some;
    }

    private static double[] step(double[] from, double[] direction, double length) {
        double[] to = from.clone();
        Kernel.add(to, length, direction);
        return to;
    }

    private static double[] minus(double[] a, double[] b) {
        double[] d = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            d[i] = a[i] - b[i];
        }
        return d;
    }
}
