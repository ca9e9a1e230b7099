package stillroom.ledger.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

/** How much of a line: {@code percent}, or {@code qs} with {@code "100"} or the kind of a reading. */
final class AmountFields {
    private static final Amount NOTHING = new Amount.Fixed(Percent.ZERO);

    private AmountFields() {}

    /** Zero, with the problem noted, where it cannot be read. */
    static Amount read(Fields fields) {
        Optional<String> qs = qs(fields);
        if (qs.isPresent() && isHundred(qs.get())) {
            return toHundred(fields);
        }
        Optional<Spans.Share> share = Spans.share(fields);
        if (qs.isPresent()) {
            return toReading(fields, qs.get(), share);
        }
        if (share.isEmpty()) {
            if (!fields.has("percent") && !fields.has("low") && !fields.has("high")) {
                fields.problem("percent", "percent is missing: a number from 0 to 100, or \"qs\": \"100\"");
            }
            return NOTHING;
        }
        if (fields.has("low") || fields.has("high")) {
            fields.problem("low", "low and high are for lines q.s. to a reading; a line has one percent");
        }
        return new Amount.Fixed(new Percent(share.get().percent()));
    }

    /** What stands in {@code qs}; a percent of "q.s." counts as it. */
    private static Optional<String> qs(Fields fields) {
        JsonNode qs = fields.value("qs");
        if (!qs.isMissingNode()) {
            return Optional.of(Words.bare(qs.asText()));
        }
        String percent = fields.value("percent").isTextual()
                ? fields.value("percent").asText().strip()
                : "";
        return percent.matches("(?i)q\\.? ?s\\.?( *(ad|to)? *100 *%?)?") ? Optional.of("100") : Optional.empty();
    }

    private static boolean isHundred(String qs) {
        return qs.equals("100") || qs.equals("true") || qs.equals("to-100") || qs.equals("to-hundred");
    }

    private static Amount toHundred(Fields fields) {
        if (Decimal.of(fields.value("percent")).isPresent() || fields.has("low") || fields.has("high")) {
            fields.problem("percent", "a line q.s. to 100 has no percent of its own");
        }
        return new Amount.ToHundred();
    }

    private static Amount toReading(Fields fields, String qs, Optional<Spans.Share> share) {
        Optional<ReadingKind> reading = Arrays.stream(ReadingKind.values())
                .filter(kind -> Words.of(kind).equals(qs))
                .findFirst();
        if (reading.isEmpty()) {
            fields.problem(
                    "qs",
                    "qs \"" + Shown.brief(qs) + "\" is not known; \"100\", or the reading that it is added up to: "
                            + Arrays.stream(ReadingKind.values()).map(Words::of).collect(Collectors.joining(", ")));
            return NOTHING;
        }
        if (share.isEmpty()) {
            fields.problem("percent", "a line q.s. to a reading needs the expected percent, best with low and high");
            return NOTHING;
        }
        return new Amount.ToReading(
                reading.get(),
                new Percent(share.get().percent()),
                new PercentRange(
                        new Percent(share.get().low()), new Percent(share.get().high())));
    }

    static void write(Amount amount, ObjectNode into) {
        if (amount instanceof Amount.Fixed fixed) {
            into.put("percent", fixed.percent().value());
        } else if (amount instanceof Amount.ToReading reading) {
            into.put("qs", Words.of(reading.reading()));
            PercentRange range = reading.range();
            Spans.putShare(
                    into,
                    new Spans.Share(
                            range.low().value(),
                            reading.expected().value(),
                            range.high().value()));
        } else {
            into.put("qs", "100");
        }
    }
}
