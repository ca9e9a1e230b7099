package stillroom.science.design;

/**
 * A design among candidates in the middle of a search. The arrays are worked on in place.
 *
 * @param chosen the candidate of each run
 * @param inverse information
 * @param smoothed inverse times moments times inverse, for the mean variance; the inverse itself where D is wanted
 * @param variance x'M⁻¹x by block and candidate
 * @param spread the same with the smoothed one
 * @param cross x'M⁻¹y by run and candidate, in the block of the run
 * @param crossSpread the same with the smoothed one
 * @param logDeterminant of the information
 */
record State(
        int[] chosen,
        double[] inverse,
        double[] smoothed,
        double[][] variance,
        double[][] spread,
        double[][] cross,
        double[][] crossSpread,
        double logDeterminant) {
    static State empty(Ground ground, int candidates) {
        int runs = ground.freshCount();
        int blocks = ground.blockCount();
        boolean isD = ground.isD();
        return new State(
                new int[runs],
                new double[0],
                new double[0],
                new double[blocks][candidates],
                new double[isD ? 0 : blocks][candidates],
                new double[runs][candidates],
                new double[isD ? 0 : runs][candidates],
                Double.NEGATIVE_INFINITY);
    }

    State with(double[] otherInverse, double[] otherSmoothed, double otherLogDeterminant) {
        return new State(
                chosen, otherInverse, otherSmoothed, variance, spread, cross, crossSpread, otherLogDeterminant);
    }

    State copy() {
        double[] copied = inverse.clone();
        return new State(
                chosen.clone(),
                copied,
                smoothed == inverse ? copied : smoothed.clone(),
                deep(variance),
                deep(spread),
                deep(cross),
                deep(crossSpread),
                logDeterminant);
    }

    private static double[][] deep(double[][] rows) {
        double[][] copy = new double[rows.length][];
        for (int i = 0; i < rows.length; i++) {
            copy[i] = rows[i].clone();
        }
        return copy;
    }
}
