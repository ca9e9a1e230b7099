package stillroom.science.equilibrium;

/** Refusal of numbers that cannot be meant. */
final class Limits {

    private Limits() {}

    static double within(String name, double number, double lowest, double highest, String unit) {
        if (!(number >= lowest && number <= highest)) { // written so that NaN is refused too
            throw new IllegalArgumentException(
                    name + " is " + number + " " + unit + ", allowed are " + lowest + " to " + highest);
        }
        return number;
    }
}
