package stillroom.ledger.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

/** Ranges: a number, a list of two, or an object with {@code low} and {@code high}. */
final class Spans {
    private Spans() {}

    static Optional<Interval> interval(Fields fields, String name, int least, int most) {
        JsonNode value = fields.value(name);
        if (value.isMissingNode()) {
            return Optional.empty();
        }
        List<BigDecimal> ends = new ArrayList<>();
        for (JsonNode end : ends(value)) {
            Decimal.of(end)
                    .filter(one -> one.doubleValue() >= least && one.doubleValue() <= most)
                    .ifPresent(ends::add);
        }
        if (ends.size() != 2 || ends.get(0).compareTo(ends.get(1)) > 0) {
            fields.problem(
                    name,
                    name + " must be a number, or {\"low\": ..., \"high\": ...} ascending, from " + least + " to "
                            + most + ", is " + Shown.brief(value.toString()));
            return Optional.empty();
        }
        return Optional.of(new Interval(ends.get(0).doubleValue(), ends.get(1).doubleValue()));
    }

    private static List<JsonNode> ends(JsonNode value) {
        if (value.isArray()) {
            return value.size() == 2 ? List.of(value.get(0), value.get(1)) : List.of();
        }
        return value.isObject() ? List.of(value.path("low"), value.path("high")) : List.of(value, value);
    }

    static void put(ObjectNode into, String name, Optional<Interval> interval) {
        interval.ifPresent(one -> {
            ObjectNode span = into.putObject(name);
            span.put("low", plain(one.low()));
            span.put("high", plain(one.high()));
        });
    }

    static Optional<PercentRange> percents(Fields fields, String name) {
        return interval(fields, name, 0, 100).map(ignored -> {
            List<JsonNode> ends = ends(fields.value(name));
            return new PercentRange(percent(ends.get(0)), percent(ends.get(1)));
        });
    }

    private static Percent percent(JsonNode end) {
        return new Percent(Decimal.of(end).orElseThrow());
    }

    static void putPercents(ObjectNode into, String name, Optional<PercentRange> range) {
        range.ifPresent(one -> {
            ObjectNode span = into.putObject(name);
            span.put("low", one.low().value());
            span.put("high", one.high().value());
        });
    }

    /** {@code percent}, {@code low} and {@code high} of an object; empty, with the problem noted, where they do not fit. */
    static Optional<Share> share(Fields fields) {
        Optional<BigDecimal> percent = fields.decimal("percent", 0, 100);
        Optional<BigDecimal> low = fields.decimal("low", 0, 100);
        Optional<BigDecimal> high = fields.decimal("high", 0, 100);
        if (percent.isEmpty() && low.isEmpty() && high.isEmpty()) {
            return Optional.empty();
        }
        if (low.isPresent() != high.isPresent()) {
            fields.problem(low.isPresent() ? "low" : "high", "low and high stand together or not at all");
            return Optional.empty();
        }
        BigDecimal least = low.or(() -> percent).orElseThrow();
        BigDecimal most = high.or(() -> percent).orElseThrow();
        BigDecimal middle = percent.orElseGet(() -> least.add(most).divide(BigDecimal.valueOf(2)));
        if (least.compareTo(middle) > 0 || middle.compareTo(most) > 0) {
            fields.problem(
                    "percent",
                    "low, percent and high must ascend, are " + least.toPlainString() + ", " + middle.toPlainString()
                            + ", " + most.toPlainString());
            return Optional.empty();
        }
        return Optional.of(new Share(least, middle, most));
    }

    static void putShare(ObjectNode into, Share share) {
        into.put("percent", share.percent());
        if (share.low().compareTo(share.high()) != 0) {
            into.put("low", share.low());
            into.put("high", share.high());
        }
    }

    /** A measured figure as a decimal: 5, not 5.0. */
    static BigDecimal plain(double figure) {
        BigDecimal bare = BigDecimal.valueOf(figure).stripTrailingZeros();
        return bare.scale() < 0 ? bare.setScale(0) : bare;
    }

    static ArrayNode list(ObjectNode into, String name, List<String> texts) {
        ArrayNode list = into.putArray(name);
        texts.forEach(list::add);
        return list;
    }

    /** A share with its range, ascending within 0 to 100 [%]. */
    record Share(BigDecimal low, BigDecimal percent, BigDecimal high) {
        MassFraction massFraction() {
            return new MassFraction(fraction(low), fraction(percent), fraction(high));
        }

        private static double fraction(BigDecimal percent) {
            return percent.movePointLeft(2).doubleValue();
        }

        /** Of a fraction; percent to 12 significant digits, so that 0.35 is written as 35. */
        static Share of(MassFraction fraction) {
            return new Share(percent(fraction.lower()), percent(fraction.nominal()), percent(fraction.upper()));
        }

        private static BigDecimal percent(double fraction) {
            return plain(fraction).movePointRight(2).stripTrailingZeros();
        }
    }
}
