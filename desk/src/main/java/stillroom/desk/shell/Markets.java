package stillroom.desk.shell;

import java.util.ArrayList;
import java.util.List;

/** The markets whose law can be asked: those on record, and the maker's own countries. */
public final class Markets {
    private static final List<Choice> SHIPPED = List.of(
            new Choice("EU", "European Union"), new Choice("UK", "Great Britain"), new Choice("US", "United States"));

    private Markets() {}

    public static List<Choice> choices() {
        List<Choice> choices = new ArrayList<>(SHIPPED);
        for (String market : Law.ownMarkets()) {
            if (SHIPPED.stream().noneMatch(known -> known.value().equals(market))) {
                choices.add(new Choice(market, market + ", own tables"));
            }
        }
        return choices;
    }

    public static List<String> codes() {
        return choices().stream().map(Choice::value).toList();
    }
}
