package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * From figures to places in a picture of 420 by 300, with ticks at round figures. A logarithmic axis is given by the decimal
 * logarithms of its ends.
 */
public record Axes(double left, double right, double low, double high, boolean logarithmic) {
    private static final double X = 74;
    private static final double WIDTH = 316;
    private static final double Y = 232;
    private static final double HEIGHT = 217;

    /**
     * A mark on an axis.
     *
     * @param x place across
     * @param y place down
     * @param label figure there
     */
    public record Tick(String x, String y, String label) {}

    static Axes plain(double left, double right, double low, double high) {
        double across = room(left, right);
        double up = room(low, high);
        return new Axes(left - across, right + across, low - up, high + up, false);
    }

    /** What is added at both ends where they are the same but for rounding, so that there is something to draw on. */
    private static double room(double from, double to) {
        double size = Math.max(Math.abs(from), Math.abs(to));
        return to - from > 1e-9 * size && to > from ? 0 : Math.max(1e-9, 0.05 * size);
    }

    String x(double value) {
        return figure(X + WIDTH * (value - left) / (right - left));
    }

    String y(double value) {
        return figure(Y - HEIGHT * (value - low) / (high - low));
    }

    String spot(double across, double up) {
        return x(across) + "," + y(up);
    }

    ResultsPage.Mark mark(double across, double up, String what) {
        return new ResultsPage.Mark(x(across), y(up), what);
    }

    public List<Tick> across() {
        return at(left, right, 5).stream()
                .map(value -> new Tick(x(value), figure(Y), label(value)))
                .toList();
    }

    public List<Tick> up() {
        return at(low, high, 5).stream()
                .map(value -> new Tick(figure(X), y(value), label(value)))
                .toList();
    }

    private String label(double value) {
        return logarithmic ? brief(Math.pow(10, value)) : brief(value);
    }

    private static String brief(double value) {
        double round = Double.parseDouble(String.format(Locale.ROOT, "%.6g", value));
        return TrialPage.plain(round == 0 ? 0 : round).replace("-", "\u2212");
    }

    private List<Double> at(double from, double to, int most) {
        return logarithmic ? decades(from, to) : round(from, to, most);
    }

    /** Round figures between two ends: steps of 1, 2 or 5 times a power of ten. */
    static List<Double> round(double from, double to, int most) {
        double rough = (to - from) / most;
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double step = 10 * power;
        for (double factor : new double[] {1, 2, 5}) {
            if (factor * power >= rough * 0.999999) {
                step = factor * power;
                break;
            }
        }
        List<Double> ticks = new ArrayList<>();
        double first = Math.ceil(from / step - 1e-9);
        for (int k = 0; k <= 2 * most && (first + k) * step <= to + 1e-9 * step; k++) {
            ticks.add((first + k) * step);
        }
        return ticks;
    }

    /** Powers of ten; their twos and fives as well where there are few. */
    private static List<Double> decades(double from, double to) {
        List<Double> ticks = new ArrayList<>();
        boolean few = to - from < 2;
        int every = (int) Math.max(1, Math.ceil((to - from) / 6));
        for (int power = (int) Math.floor(from); power <= Math.ceil(to); power++) {
            for (double factor : few ? new double[] {1, 2, 5} : new double[] {1}) {
                double there = power + Math.log10(factor);
                if (there >= from - 1e-9 && there <= to + 1e-9 && Math.floorMod(power, every) == 0) {
                    ticks.add(there);
                }
            }
        }
        return ticks;
    }

    private static String figure(double place) {
        return String.format(Locale.ROOT, "%.1f", place);
    }
}
