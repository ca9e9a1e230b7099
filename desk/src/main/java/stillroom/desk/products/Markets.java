package stillroom.desk.products;

import java.util.ArrayList;
import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Law;

/** The markets whose law can be asked: those on record, and the maker's own countries. */
final class Markets {
    private static final List<Choice> SHIPPED = List.of(
            new Choice("EU", "European Union"), new Choice("UK", "Great Britain"), new Choice("US", "United States"));

    private Markets() {}

    static List<Choice> choices() {
        List<Choice> choices = new ArrayList<>(SHIPPED);
        for (String market : Law.ownMarkets()) {
            if (SHIPPED.stream().noneMatch(known -> known.value().equals(market))) {
                choices.add(new Choice(market, market + ", own tables"));
            }
        }
        return choices;
    }

    static List<String> codes() {
        return choices().stream().map(Choice::value).toList();
    }
}
