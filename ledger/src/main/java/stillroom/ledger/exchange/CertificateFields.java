package stillroom.ledger.exchange;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.material.FragranceCertificate;
import stillroom.formulary.material.FragranceCertificate.MaximumUse;
import stillroom.formulary.quantity.Percent;

/** What is certified of a perfume or an essential oil. */
final class CertificateFields {
    private static final int MOST_MILLIGRAMS = 1_000_000;

    private CertificateFields() {}

    /** Empty, with the problem noted, where it has no day. */
    static Optional<FragranceCertificate> read(Fields fields) {
        Optional<LocalDate> day = fields.day("issuedOn");
        if (!fields.has("issuedOn")) {
            fields.problem("issuedOn", "issuedOn is missing: the day on the certificate");
        }
        String standard = fields.text("standard");
        Optional<Double> furocoumarins = fields.number("furocoumarinsMilligramsPerKilogram", 0, MOST_MILLIGRAMS);
        List<MaximumUse> maxima = new ArrayList<>();
        for (Fields one : fields.objects("maxima", "maximum")) {
            maximum(one).ifPresent(maxima::add);
        }
        fields.done();
        return day.map(issued -> new FragranceCertificate(issued, standard, maxima, furocoumarins));
    }

    private static Optional<MaximumUse> maximum(Fields fields) {
        String category = fields.requiredText("category", "as the certificate calls it, such as 5A");
        Set<ProductType> types = fields.words("types", ProductType.class);
        Optional<BigDecimal> highest = fields.decimal("percent", 0, 100);
        if (!fields.has("percent")) {
            fields.problem("percent", "percent is missing: highest use in the product");
        }
        fields.done();
        return highest.map(most -> new MaximumUse(category, types, new Percent(most)));
    }

    static void write(FragranceCertificate certificate, ObjectNode into) {
        into.put("issuedOn", certificate.issuedOn().toString());
        Texts.put(into, "standard", certificate.standard());
        certificate
                .furocoumarinsMilligramsPerKilogram()
                .ifPresent(one -> into.put("furocoumarinsMilligramsPerKilogram", Spans.plain(one)));
        if (!certificate.maxima().isEmpty()) {
            ArrayNode maxima = into.putArray("maxima");
            for (MaximumUse maximum : certificate.maxima()) {
                ObjectNode one = maxima.addObject();
                one.put("category", maximum.category());
                Spans.list(
                        one,
                        "types",
                        maximum.types().stream().sorted().map(Words::of).toList());
                one.put("percent", maximum.highest().value());
            }
        }
    }
}
