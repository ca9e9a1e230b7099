package stillroom.formulary.label;

/**
 * A warning that a rule demands.
 *
 * @param key which warning
 * @param text in the label's language; empty where nobody has entered it
 * @param rule id of the rule that demands it
 * @param source where that rule stands
 * @param reserve why the wording needs a second look, empty when it was read in the law
 */
public record LabelWarning(String key, String text, String rule, String source, String reserve) {}
