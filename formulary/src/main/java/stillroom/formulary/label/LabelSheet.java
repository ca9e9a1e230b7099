package stillroom.formulary.label;

/**
 * The label of a formula version as the maker set it up: what stands on it besides the formula, and how large it is.
 *
 * @param widthMillimetres, heightMillimetres of the printed label, 15 to 300 [mm]
 */
public record LabelSheet(LabelInput input, int widthMillimetres, int heightMillimetres) {
    private static final int SMALLEST = 15;
    private static final int LARGEST = 300;

    public LabelSheet {
        checkSide("width", widthMillimetres);
        checkSide("height", heightMillimetres);
    }

    private static void checkSide(String side, int millimetres) {
        if (millimetres < SMALLEST || millimetres > LARGEST) {
            throw new IllegalArgumentException(
                    "label " + side + " is " + millimetres + " mm, allowed " + SMALLEST + " to " + LARGEST + " mm");
        }
    }

    /** A label of usual size with nothing on it yet but the product's name. */
    public static LabelSheet named(String productName) {
        return new LabelSheet(LabelInput.named(productName), 90, 60);
    }
}
