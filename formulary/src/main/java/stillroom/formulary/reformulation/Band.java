package stillroom.formulary.reformulation;

/**
 * Where a figure is and how far it may move, so that a formula can be kept near the middle and a band be widened by name.
 *
 * @param at the present value
 * @param room how far it may move, up or down
 * @param pull what a move by the whole room weighs beside the sum of changes, in parts of the formula; 0 where it does not matter
 * @param widened the wish with a band that just reaches a bound
 */
record Band(double at, double room, double pull, Widened widened) {
    @FunctionalInterface
    interface Widened {
        Wish to(Wish wish, double bound);
    }
}
