package stillroom.science.design;

import java.util.ArrayList;
import java.util.List;
import stillroom.science.mixture.MixtureModel;
import stillroom.science.mixture.Polytope;

/** Points at which good designs for Scheffé models are usually found: corners, middles of edges and faces, and inner points. */
final class Candidates {
    private static final int MOST = 2500;
    private static final double SAME = 1e-7;

    private Candidates() {}

    static List<double[]> of(Polytope region, MixtureModel model) {
        List<double[]> mixtures = isStraight(model)
                ? region.vertices()
                : mixtures(region, Math.max(200, MOST / grid(model).size()));
        if (model.processes() == 0) {
            return mixtures;
        }
        List<double[]> crossed = new ArrayList<>();
        for (double[] mixture : mixtures) {
            for (double[] setting : grid(model)) {
                double[] point = java.util.Arrays.copyOf(mixture, mixture.length + setting.length);
                System.arraycopy(setting, 0, point, mixture.length, setting.length);
                crossed.add(point);
            }
        }
        return crossed;
    }

    /** Where no component enters twice, every gain is convex along a line, so that corners suffice. */
    private static boolean isStraight(MixtureModel model) {
        return model.terms().stream().allMatch(term -> term.components().size() <= 1);
    }

    private static List<double[]> mixtures(Polytope region, int most) {
        List<double[]> points = new ArrayList<>(region.vertices());
        double[] centre = region.centroid();
        add(points, centre, most);
        int corners = points.size() - 1;
        region.edgeMidpoints().forEach(point -> add(points, point, most));
        region.facetCentroids().forEach(point -> add(points, point, most));
        region.planeCentroids().forEach(point -> add(points, point, most));
        int sofar = points.size();
        for (int i = 0; i < Math.min(sofar, 4 * corners) && i != corners; i++) {
            add(points, between(points.get(i), centre), most);
        }
        return points;
    }

    private static double[] between(double[] a, double[] b) {
        double[] middle = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            middle[i] = (a[i] + b[i]) / 2;
        }
        return middle;
    }

    private static void add(List<double[]> points, double[] point, int most) {
        if (points.size() < most && points.stream().noneMatch(other -> same(other, point))) {
            points.add(point);
        }
    }

    static boolean same(double[] a, double[] b) {
        for (int i = 0; i < a.length; i++) {
            if (Math.abs(a[i] - b[i]) > SAME) {
                return false;
            }
        }
        return true;
    }

    /** Settings of the process variables: two levels, three where squares are fitted. */
    private static List<double[]> grid(MixtureModel model) {
        boolean squares = model.terms().stream()
                .anyMatch(term -> term.processes().size() == 2
                        && term.processes().get(0).equals(term.processes().get(1)));
        double[] levels = squares ? new double[] {-1, 0, 1} : new double[] {-1, 1};
        List<double[]> grid = List.of(new double[0]);
        for (int k = 0; k < model.processes(); k++) {
            List<double[]> wider = new ArrayList<>();
            for (double[] setting : grid) {
                for (double level : levels) {
                    double[] more = java.util.Arrays.copyOf(setting, setting.length + 1);
                    more[setting.length] = level;
                    wider.add(more);
                }
            }
            grid = wider;
        }
        return grid;
    }
}
