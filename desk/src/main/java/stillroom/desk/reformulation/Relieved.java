package stillroom.desk.reformulation;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stillroom.formulary.reformulation.Bought;
import stillroom.formulary.reformulation.Wish;

/** A wish that gives way, as the address of the page that asks it. */
final class Relieved {
    private static final int DECIMALS = 4;
    private static final double PERCENT = 100;

    private final Map<String, String> fields;

    private Relieved(Map<String, String> fields) {
        this.fields = new LinkedHashMap<>(fields);
    }

    /** @param asked fields of the wish that could not be kept */
    static String query(Map<String, String> asked, Wish was, Wish is) {
        Relieved relieved = new Relieved(asked);
        relieved.bands(was, is);
        is.atMost().ifPresent(most -> relieved.set("most", String.valueOf(most)));
        is.allowed().forEach((key, allowed) -> {
            if (!allowed.equals(was.allowed().get(key))) {
                relieved.set(OwnBands.LEAST + key, figure(PERCENT * allowed.low()));
                relieved.set(OwnBands.MOST + key, figure(PERCENT * allowed.high()));
            }
        });
        if (!is.without().equals(was.without())) {
            List<String> gone = is.without().stream().sorted().toList();
            relieved.set(Asked.WITHOUT, gone.isEmpty() ? "" : gone.get(0));
            relieved.set(Asked.ALSO, String.join("\n", gone.subList(Math.min(1, gone.size()), gone.size())));
        }
        return relieved.query();
    }

    /** The least change with one material bought; of one without a price no cost is asked. */
    static String buying(Map<String, String> asked, Bought bought) {
        Relieved relieved = new Relieved(asked);
        relieved.set("aim", Aim.CHANGE.name());
        String before = asked.getOrDefault(Asked.BUY, "");
        relieved.set(
                Asked.BUY,
                before.isEmpty()
                        ? bought.card().key()
                        : before + "\n" + bought.card().key());
        relieved.fields.remove("curve");
        if (!bought.priced()) {
            relieved.fields.remove("cost");
        }
        int ingredients = (int) bought.answer().changes().stream()
                .filter(change -> change.after() > 0)
                .count();
        String most = asked.getOrDefault("most", "");
        if (!most.isEmpty() && Integer.parseInt(most.strip()) < ingredients) {
            relieved.set("most", String.valueOf(ingredients));
        }
        return relieved.query();
    }

    private void bands(Wish was, Wish is) {
        is.bands().own().forEach((name, width) -> {
            if (!width.equals(was.bands().own().get(name))) {
                set(OwnBands.field(name), figure(width));
            }
        });
        is.bands().constituents().forEach((key, width) -> {
            if (!width.equals(was.bands().constituents().get(key))) {
                set(Asked.CONSTITUENT + key, figure(width));
            }
        });
        is.bands().cost().ifPresent(cost -> set("cost", figure(cost)));
        is.bands().natural().ifPresent(natural -> set("natural", figure(natural)));
        if (was.bands().noHarsher() && !is.bands().noHarsher()) {
            fields.remove(Asked.NO_HARSHER);
        }
    }

    private void set(String field, String value) {
        fields.put(field, value);
    }

    private static String figure(double value) {
        return BigDecimal.valueOf(value)
                .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }

    private String query() {
        return fields.entrySet().stream()
                .flatMap(field -> Arrays.stream(field.getValue().split("\n"))
                        .map(value -> encoded(field.getKey()) + "=" + encoded(value)))
                .collect(Collectors.joining("&"));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
