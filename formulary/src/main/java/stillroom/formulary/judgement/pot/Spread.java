package stillroom.formulary.judgement.pot;

/**
 * How far one thing that is known as a range moves the expected pH.
 *
 * @param cause in words
 * @param down not above 0 [pH]
 * @param up not below 0 [pH]
 */
record Spread(String cause, double down, double up) {
    static Spread between(String cause, double one, double other) {
        return new Spread(cause, Math.min(0, Math.min(one, other)), Math.max(0, Math.max(one, other)));
    }

    double width() {
        return up - down;
    }
}
