package stillroom.desk.trials;

import java.util.Locale;

/** From figures to places in a picture of 600 by 300. */
record Axes(double left, double right, double low, double high) {
    String x(double value) {
        return String.format(Locale.ROOT, "%.1f", 20 + 560 * (value - left) / Math.max(1e-300, right - left));
    }

    String y(double value) {
        return String.format(Locale.ROOT, "%.1f", 280 - 260 * (value - low) / Math.max(1e-300, high - low));
    }

    String spot(double across, double up) {
        return x(across) + "," + y(up);
    }

    ResultsPage.Mark mark(double across, double up, String what) {
        return new ResultsPage.Mark(x(across), y(up), what);
    }
}
