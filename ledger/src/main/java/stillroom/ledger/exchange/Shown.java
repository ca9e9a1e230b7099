package stillroom.ledger.exchange;

/** What a stranger wrote, fit to stand in a sentence. */
final class Shown {
    private static final int LONGEST = 60;

    private Shown() {}

    /** Without control characters and not longer than a sentence bears. */
    static String brief(String text) {
        String plain = text.replaceAll("[\\p{Cntrl}\\p{Cf}]+", " ");
        return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST) + "...";
    }
}
