package stillroom.desk.products;

import java.util.List;
import stillroom.desk.shell.Choice;

/** The markets whose law can be asked. */
final class Markets {
    static final List<Choice> CHOICES = List.of(
            new Choice("EU", "European Union"), new Choice("UK", "Great Britain"), new Choice("US", "United States"));
    static final List<String> CODES = CHOICES.stream().map(Choice::value).toList();

    private Markets() {}
}
