package stillroom.formulary.rule;

import java.util.List;

/**
 * What goes in before what, and why.
 *
 * @param id stable, such as {@code order.benzoate-before-acid}
 * @param fault whether the swap can spoil the batch; else it is worth a look
 * @param first selectors of what goes in first: {@code tag:gum}, {@code substance:sodium-benzoate}, {@code family:acid}
 * @param then selectors of what goes in later
 * @param reason one sentence
 */
public record OrderRule(
        String id, boolean fault, List<String> first, List<String> then, String reason, String mend, String source) {
    public OrderRule {
        first = List.copyOf(first);
        then = List.copyOf(then);
    }
}
