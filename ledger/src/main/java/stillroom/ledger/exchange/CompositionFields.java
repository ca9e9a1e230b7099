package stillroom.ledger.exchange;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.material.Constituent;

/** The constituents of a card. One of them may be the rest: {@code "qs": "100"}. */
final class CompositionFields {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    /** What rounding on a data sheet may add up to beyond the whole [%]. */
    private static final BigDecimal SLACK = new BigDecimal("0.5");

    /** Prefix by which a constituent names another card. */
    static final String CARD = "material:";

    private CompositionFields() {}

    private record Entry(Fields fields, String substance, Constituent.Role role, Optional<Spans.Share> share) {}

    static List<Constituent> read(Fields card) {
        List<Entry> entries = new ArrayList<>();
        for (Fields fields : card.objects("composition", "constituent")) {
            entries.add(entry(fields));
        }
        List<Entry> rest = entries.stream().filter(one -> one.share.isEmpty()).toList();
        if (rest.size() > 1) {
            rest.get(1).fields.problem("percent", "only one constituent can be the rest up to 100");
            return List.of();
        }
        Sum sum = Sum.of(entries);
        if (sum.low.compareTo(HUNDRED.add(SLACK)) > 0) {
            card.problem("composition", "the constituents make " + sum.low.toPlainString() + " %, more than 100 %");
            return List.of();
        }
        return entries.stream()
                .map(one -> new Constituent(
                        one.substance, one.share.orElseGet(sum::rest).massFraction(), one.role))
                .toList();
    }

    private static Entry entry(Fields fields) {
        String substance =
                fields.has("material") ? CARD + Words.bare(fields.text("material")) : NamedBy.read(fields, "substance");
        Constituent.Role role = fields.word("role", Constituent.Role.class).orElse(Constituent.Role.INGREDIENT);
        boolean rest = Words.bare(fields.text("qs")).equals("100");
        Optional<Spans.Share> share = rest ? Optional.empty() : Spans.share(fields);
        if (!rest && share.isEmpty()) {
            if (!fields.has("percent") && !fields.has("low") && !fields.has("high")) {
                fields.problem("percent", "percent is missing: a number from 0 to 100, or low and high");
            }
            share = Optional.of(new Spans.Share(BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO));
        }
        fields.done();
        return new Entry(fields, substance, role, share);
    }

    static void write(List<Constituent> composition, ObjectNode card) {
        if (composition.isEmpty()) {
            return;
        }
        ArrayNode list = card.putArray("composition");
        for (Constituent one : composition) {
            ObjectNode into = list.addObject();
            if (one.substance().startsWith(CARD)) {
                into.put("material", one.substance().substring(CARD.length()));
            } else {
                NamedBy.write(into, "substance", one.substance());
            }
            Spans.putShare(into, Spans.Share.of(one.massFraction()));
            if (one.role() != Constituent.Role.INGREDIENT) {
                into.put("role", Words.of(one.role()));
            }
        }
    }

    /** What the stated constituents make together [%]. */
    private record Sum(BigDecimal low, BigDecimal percent, BigDecimal high) {
        static Sum of(List<Entry> entries) {
            Sum sum = new Sum(BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO);
            for (Entry entry : entries) {
                if (entry.share.isPresent()) {
                    Spans.Share share = entry.share.get();
                    sum = new Sum(
                            sum.low.add(share.low()), sum.percent.add(share.percent()), sum.high.add(share.high()));
                }
            }
            return sum;
        }

        Spans.Share rest() {
            return new Spans.Share(left(high), left(percent), left(low));
        }

        private static BigDecimal left(BigDecimal taken) {
            return HUNDRED.subtract(taken).max(BigDecimal.ZERO);
        }
    }
}
