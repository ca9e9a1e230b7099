package stillroom.science.mixture;

/** A corner of a body, and as bits which sides it lies on. */
final class Corner {
    private final double[] point;
    private final long sides;

    Corner(double[] point, long sides) {
        this.point = point;
        this.sides = sides;
    }

    double[] point() {
        return point;
    }

    long sides() {
        return sides;
    }

    Corner with(long side) {
        return new Corner(point, sides | side);
    }
}
