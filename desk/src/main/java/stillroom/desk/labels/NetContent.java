package stillroom.desk.labels;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillroom.desk.shell.Decimals;
import stillroom.formulary.batch.DeclaredContent;

/** The nominal content as a figure, read out of what stands on the label or on a container. */
public final class NetContent {
    private static final Pattern FIRST_FIGURE =
            Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*(ml|cl|g|l|kg)\\b", Pattern.CASE_INSENSITIVE);

    private NetContent() {}

    /** In g or ml; empty where no figure with a unit stands there. */
    public static Optional<Double> figure(String netContent) {
        return read(netContent).map(content -> content.figure().doubleValue());
    }

    /** Figure and kind; empty where no figure with a unit stands there. */
    public static Optional<DeclaredContent> read(String text) {
        Matcher figure = FIRST_FIGURE.matcher(text);
        if (!figure.find()) {
            return Optional.empty();
        }
        String unit = figure.group(2).toLowerCase(Locale.ROOT);
        int shift = switch (unit) {
            case "l", "kg" -> 3;
            case "cl" -> 1;
            default -> 0;
        };
        return Decimals.read(figure.group(1))
                .map(value -> value.movePointRight(shift))
                .filter(value -> value.compareTo(BigDecimal.ZERO) > 0)
                .map(value -> new DeclaredContent(value, unit.endsWith("l")));
    }
}
