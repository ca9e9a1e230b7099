package stillroom.science.blend;

/** The two sums that a simplex is made of. */
final class Vectors {
    private Vectors() {}

    static double dot(double[] left, double[] right) {
        double sum = 0;
        for (int i = 0; i < left.length; i++) {
            sum += left[i] * right[i];
        }
        return sum;
    }

    /** Adds a multiple of the shorter array to the front of the longer. */
    static void addMultiple(double[] to, double[] of, double times) {
        int length = Math.min(to.length, of.length);
        for (int j = 0; j < length; j++) {
            to[j] += times * of[j];
        }
    }
}
