package stillroom.science.design;

import java.util.ArrayList;
import java.util.List;

/** Adds repeats to a design: each time the run whose repetition gains most, no run twice. */
final class Repeating {
    private Repeating() {}

    /** @param ground of the whole design; its last runs become repeats */
    static List<double[]> extended(Ground ground, List<double[]> points) {
        List<double[]> all = new ArrayList<>(points);
        List<double[]> left = new ArrayList<>(points);
        while (all.size() < ground.freshCount() && !left.isEmpty()) {
            double[] best = left.get(0);
            double most = Double.NEGATIVE_INFINITY;
            for (double[] point : left) {
                List<double[]> tried = new ArrayList<>(all);
                tried.add(point);
                double score = score(ground, tried);
                if (score > most) {
                    most = score;
                    best = point;
                }
            }
            all.add(best);
            left.remove(best);
        }
        return all;
    }

    private static double score(Ground ground, List<double[]> points) {
        double[] information = ground.madeInformation();
        for (int i = 0; i < points.size(); i++) {
            Kernel.update(information, 1, ground.row(points.get(i), ground.blockOf(i)));
        }
        double logDeterminant = Kernel.invert(information, ground.size());
        return ground.score(information, logDeterminant);
    }
}
