package stillroom.science.blend;

/**
 * One ingredient of a blend: absent, or between its least dose and its most, as mass fractions.
 *
 * @param leastIfUsed least mass fraction where it is used at all, 0 to {@code most}
 * @param most greatest mass fraction, 0 to 1
 * @param required it may not be absent
 */
public record Ingredient(String name, double leastIfUsed, double most, boolean required, Cost cost) {
    public Ingredient {
        if (!(leastIfUsed >= 0 && leastIfUsed <= 1 && most >= 0 && most <= 1)) {
            throw new IllegalArgumentException(
                    name + " is bounded by " + leastIfUsed + " and " + most + ", fractions must be 0 to 1");
        }
        if (leastIfUsed > most) {
            throw new IllegalArgumentException(
                    name + " has a least dose of " + leastIfUsed + ", above its most, " + most);
        }
    }
}
