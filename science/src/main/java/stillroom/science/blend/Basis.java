package stillroom.science.blend;

/** Where a simplex stood: which variable is basic in each row, and which of the others stand at their upper bound. */
final class Basis {
    private final int[] basic;
    private final boolean[] atUpper;

    /** Takes the arrays over: nobody may change them afterwards. */
    Basis(int[] basic, boolean[] atUpper) {
        this.basic = basic;
        this.atUpper = atUpper;
    }

    int basic(int row) {
        return basic[row];
    }

    boolean atUpper(int variable) {
        return atUpper[variable];
    }
}
