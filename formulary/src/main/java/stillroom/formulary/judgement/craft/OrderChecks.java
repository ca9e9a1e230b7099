package stillroom.formulary.judgement.craft;

import java.util.List;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Item;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Substance;
import stillroom.formulary.rule.OrderRule;

/** Order of addition, by the table of order rules with their reasons. */
final class OrderChecks {
    private OrderChecks() {}

    static void sequence(Pot pot, Consumer<Finding> report) {
        List<Item> items = pot.items();
        for (OrderRule rule : pot.rules().order()) {
            for (int late = 1; late < items.size(); late++) {
                Item first = items.get(late);
                if (!matches(pot, first, rule.first())) {
                    continue;
                }
                // The nearest wrong neighbour is the one to swap with.
                for (int early = late - 1; early >= 0; early--) {
                    if (matches(pot, items.get(early), rule.then())) {
                        report.accept(finding(rule, first, items.get(early)));
                        break;
                    }
                }
            }
        }
    }

    /** Side by side in one phase the list is the order of work; over phases the maker may mean something else. */
    private static Finding finding(OrderRule rule, Item first, Item then) {
        boolean samePhase = first.portion().phase().equals(then.portion().phase());
        return new Finding(
                samePhase ? Finding.Kind.PROBABLE_FAULT : Finding.Kind.LOOK_AT_THIS,
                rule.id(),
                rule.source(),
                List.of(first.portion().lineId(), then.portion().lineId()),
                List.of(),
                first.name() + " goes in after " + then.name() + ". " + rule.reason(),
                "Swap them: " + first.name() + " first. " + rule.mend());
    }

    private static boolean matches(Pot pot, Item item, List<String> selectors) {
        return item.portion().share().upper() > 0
                && item.material().isPresent()
                && selectors.stream().anyMatch(selector -> matches(pot, item, selector));
    }

    private static boolean matches(Pot pot, Item item, String selector) {
        int colon = selector.indexOf(':');
        String word = selector.substring(colon + 1);
        List<Constituent> parts = item.material().orElseThrow().composition().stream()
                .filter(part -> part.role() == Constituent.Role.INGREDIENT)
                .toList();
        return switch (selector.substring(0, colon)) {
            case "family" -> item.material().orElseThrow().family().name().equalsIgnoreCase(word);
            case "substance" -> parts.stream().anyMatch(part -> part.substance().equals(word));
            case "tag" ->
                parts.stream()
                        .flatMap(part -> pot.book().substance(part.substance()).stream())
                        .anyMatch((Substance substance) -> substance.is(word));
            default -> throw new IllegalArgumentException("order rule selects by \"" + selector + "\"");
        };
    }
}
