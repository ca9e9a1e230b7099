/**
 * Blends: fractions that add up to one, within limits on weighted sums, each ingredient absent or above its least dose, at
 * a proven least cost; and, where no such blend exists, which requirements are against each other.
 */
@org.jspecify.annotations.NullMarked
package stillroom.science.blend;
