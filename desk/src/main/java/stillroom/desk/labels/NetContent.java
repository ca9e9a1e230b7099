package stillroom.desk.labels;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillroom.desk.shell.Decimals;

/** The nominal content as a figure, read out of what stands on the label. */
public final class NetContent {
    private static final Pattern FIRST_FIGURE = Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*(ml|g|l|kg)\\b");

    private NetContent() {}

    /** In g or ml; empty where no figure with a unit stands there. */
    public static Optional<Double> figure(String netContent) {
        Matcher figure = FIRST_FIGURE.matcher(netContent);
        if (!figure.find()) {
            return Optional.empty();
        }
        double factor = figure.group(2).equals("l") || figure.group(2).equals("kg") ? 1000 : 1;
        return Decimals.read(figure.group(1)).map(value -> value.doubleValue() * factor);
    }
}
