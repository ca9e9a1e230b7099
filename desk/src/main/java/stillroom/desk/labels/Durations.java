package stillroom.desk.labels;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stillroom.formulary.label.Durability;

/** How a durability stands on a label. */
public final class Durations {
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MM/uuuu", Locale.ENGLISH);

    private Durations() {}

    public static String words(Durability durability) {
        List<String> parts = new ArrayList<>();
        durability.bestBefore().ifPresent(day -> parts.add("Best used before the end of " + MONTH.format(day)));
        durability.monthsAfterOpening().ifPresent(months -> parts.add(months + " M after opening"));
        return String.join("; ", parts);
    }
}
