package stillroom.formulary.judgement.craft;

import java.util.List;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Item;
import stillroom.formulary.judgement.pot.Opened;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Substance;
import stillroom.formulary.rule.OrderRule;

/** Order of addition, by the table of order rules with their reasons. */
final class OrderChecks {
    private OrderChecks() {}

    static void sequence(Pot pot, Consumer<Finding> report) {
        List<Item> items = pot.items();
        List<Ingredients> ingredients = Ingredients.of(pot);
        for (OrderRule rule : pot.rules().order()) {
            boolean[] first = matching(pot, ingredients, rule.first());
            boolean[] then = matching(pot, ingredients, rule.then());
            for (int late = 1; late < items.size(); late++) {
                // The nearest wrong neighbour is the one to swap with.
                for (int early = late - 1; first[late] && early >= 0; early--) {
                    if (then[early]) {
                        report.accept(finding(rule, items.get(late), items.get(early)));
                        break;
                    }
                }
            }
        }
    }

    /** A gum goes lumpy in water unless something wets it first; so a look where nothing that wets stands before it. */
    static void wetting(Pot pot, Consumer<Finding> report) {
        List<Ingredients> ingredients = Ingredients.of(pot);
        boolean[] gums = matching(pot, ingredients, List.of("tag:gum"));
        boolean[] wets =
                matching(pot, ingredients, List.of("tag:humectant", "tag:oil", "tag:alcohol", "tag:ethoxylated"));
        for (int gum = 0; gum < gums.length; gum++) {
            boolean wetted = false;
            boolean inWater = false;
            for (int before = 0; before < gum; before++) {
                boolean samePhase = pot.items()
                        .get(before)
                        .portion()
                        .phase()
                        .equals(pot.items().get(gum).portion().phase());
                wetted |= samePhase && wets[before];
                inWater |= samePhase && pot.items().get(before).is(Family.WATER);
            }
            if (gums[gum] && inWater && !wetted) {
                report.accept(new Finding(
                        Finding.Kind.LOOK_AT_THIS,
                        "order.gum-wetted",
                        CraftChecks.PRACTICE,
                        List.of(pot.items().get(gum).portion().lineId()),
                        List.of(),
                        pot.items().get(gum).name()
                                + " goes into water dry; grains swell from outside and keep dry lumps.",
                        "Wet it in a glycol, glycerin or oil first, or strew it slowly under fast stirring."));
            }
        }
    }

    private static boolean[] matching(Pot pot, List<Ingredients> items, List<String> selectors) {
        boolean[] matching = new boolean[items.size()];
        for (int i = 0; i < matching.length; i++) {
            Ingredients one = items.get(i);
            for (int word = 0; one.counts() && !matching[i] && word < selectors.size(); word++) {
                matching[i] = matches(pot, one, selectors.get(word));
            }
        }
        return matching;
    }

    /** Side by side in one phase the list is the order of work; over phases the maker may mean something else. */
    private static Finding finding(OrderRule rule, Item first, Item then) {
        boolean samePhase = first.portion().phase().equals(then.portion().phase());
        return new Finding(
                samePhase && rule.fault() ? Finding.Kind.PROBABLE_FAULT : Finding.Kind.LOOK_AT_THIS,
                rule.id(),
                rule.source(),
                List.of(first.portion().lineId(), then.portion().lineId()),
                List.of(),
                first.name() + " goes in after " + then.name() + ". " + rule.reason(),
                "Swap them: " + first.name() + " first. " + rule.mend());
    }

    private static boolean matches(Pot pot, Ingredients item, String selector) {
        int colon = selector.indexOf(':');
        String word = selector.substring(colon + 1);
        return switch (selector.substring(0, colon)) {
            case "family" ->
                item.item().material().orElseThrow().family().name().equalsIgnoreCase(word);
            case "substance" ->
                item.parts().stream().anyMatch(part -> part.substance().equals(word));
            case "tag" ->
                item.parts().stream()
                        .flatMap(part -> pot.book().substance(part.substance()).stream())
                        .anyMatch((Substance substance) -> substance.is(word));
            default -> throw new IllegalArgumentException("order rule selects by \"" + selector + "\"");
        };
    }

    /** A line with what is in it on purpose, opened once for all rules. */
    private record Ingredients(Item item, List<Constituent> parts) {
        static List<Ingredients> of(Pot pot) {
            return pot.items().stream()
                    .map(item -> new Ingredients(
                            item,
                            Opened.parts(item.material(), pot.book()).stream()
                                    .filter(part -> part.role() == Constituent.Role.INGREDIENT)
                                    .toList()))
                    .toList();
        }

        boolean counts() {
            return item.portion().share().upper() > 0 && item.material().isPresent();
        }
    }
}
