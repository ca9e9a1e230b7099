package stillroom.desk.trials;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Decimals;
import stillroom.desk.shell.Input;

/** Pairs of figures typed one a line. */
final class Readings {
    private Readings() {}

    static List<double[]> pairs(Input input, String field) {
        List<double[]> pairs = new ArrayList<>();
        for (String line : input.lines(field)) {
            String[] parts = line.split("[;\\t ]+");
            Optional<BigDecimal> first = Decimals.read(parts[0]);
            Optional<BigDecimal> second = parts.length > 1 ? Decimals.read(parts[1]) : Optional.empty();
            if (parts.length != 2 || first.isEmpty() || second.isEmpty()) {
                input.refuse(field, "\"" + line + "\" is not two figures with a blank between.");
            } else if (Decimals.mayPartThousands(parts[1])) {
                input.refuse(field, Input.twoWays(parts[1]));
            } else {
                pairs.add(new double[] {first.get().doubleValue(), second.get().doubleValue()});
            }
        }
        return pairs;
    }
}
