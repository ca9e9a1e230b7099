package stillroom.formulary.reformulation;

import stillroom.formulary.evaluation.Figure;

/** What a formula can be made best in, as the evaluation has it. */
public enum Measure {
    /** Sum of changes, half of which is put in and half taken out [% of the formula]. */
    CHANGE("Change", "sum of changes, %", false),
    /** Per 100 g, in the workshop's currency. */
    COST("Cost", "cost per 100 g", false),
    /** By ISO 16128-2, as far as the cards guarantee it [%]. */
    NATURAL("Natural origin", "natural origin guaranteed, %", true),
    /** Lines of the formula. */
    COUNT("Ingredients", "ingredients", false);

    private final String words;
    private final String unit;
    private final boolean moreIsBetter;

    Measure(String words, String unit, boolean moreIsBetter) {
        this.words = words;
        this.unit = unit;
        this.moreIsBetter = moreIsBetter;
    }

    public String words() {
        return words;
    }

    /** What an axis or a column says. */
    public String unit() {
        return unit;
    }

    public boolean moreIsBetter() {
        return moreIsBetter;
    }

    /** NaN where the evaluation does not know it. */
    public double of(Answer answer) {
        return switch (this) {
            case CHANGE ->
                answer.changes().stream()
                        .mapToDouble(each -> Math.abs(each.by()))
                        .sum();
            case COST -> answer.evaluation().figures().costPer100g().match(Figure::value, because -> Double.NaN);
            case NATURAL -> answer.origin().guaranteed();
            case COUNT -> answer.formula().lines().size();
        };
    }

    /** Smaller is better, whichever way the measure goes. */
    double badness(Answer answer) {
        return moreIsBetter ? -of(answer) : of(answer);
    }

    /** This first; of equals those that are better in the other. */
    Goal before(Measure other) {
        return Goal.NOTHING.with(other, Goal.TIE).with(this, 1);
    }
}
