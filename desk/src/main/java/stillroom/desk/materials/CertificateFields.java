package stillroom.desk.materials;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Input;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.material.FragranceCertificate;
import stillroom.formulary.material.FragranceCertificate.MaximumUse;
import stillroom.formulary.quantity.Percent;

/**
 * The certificate of a perfume as form fields, and back. Highest uses are written one on each line: category, product
 * types and percent between colons, such as {@code 5A: body-lotion, body-oil: 0.8}.
 */
final class CertificateFields {
    static final String DAY = "certificate-day";
    static final String STANDARD = "certificate-standard";
    static final String FUROCOUMARINS = "certificate-furocoumarins";
    static final String MAXIMA = "certificate-maxima";

    private CertificateFields() {}

    static Map<String, String> of(Optional<FragranceCertificate> certificate) {
        Map<String, String> fields = new HashMap<>();
        certificate.ifPresent(known -> {
            fields.put(DAY, known.issuedOn().toString());
            fields.put(STANDARD, known.standard());
            known.furocoumarinsMilligramsPerKilogram()
                    .ifPresent(content -> fields.put(FUROCOUMARINS, Words.plain(content)));
            fields.put(
                    MAXIMA, known.maxima().stream().map(CertificateFields::line).collect(Collectors.joining("\n")));
        });
        return fields;
    }

    private static String line(MaximumUse use) {
        String types =
                use.types().stream().sorted().map(CertificateFields::word).collect(Collectors.joining(", "));
        return use.category() + ": " + types + ": " + use.highest();
    }

    /** The certificate in words, a line for each category, for the card's page. */
    static String words(FragranceCertificate certificate) {
        List<String> lines = new ArrayList<>();
        lines.add(Format.day(certificate.issuedOn())
                + (certificate.standard().isEmpty() ? "" : ", " + certificate.standard()));
        certificate.maxima().stream()
                .map(use -> "Category " + use.category() + ", at most " + use.highest() + " %: "
                        + use.types().stream().sorted().map(ProductType::words).collect(Collectors.joining(", ")))
                .forEach(lines::add);
        certificate
                .furocoumarinsMilligramsPerKilogram()
                .map(content -> "Furocoumarins " + Words.plain(content) + " mg/kg")
                .ifPresent(lines::add);
        return String.join("\n", lines);
    }

    /** Empty where no field is filled in, or something is refused. */
    static Optional<FragranceCertificate> read(Input input) {
        List<String> lines = input.lines(MAXIMA);
        boolean any = !lines.isEmpty()
                || !input.text(DAY).isEmpty()
                || !input.text(STANDARD).isEmpty()
                || !input.text(FUROCOUMARINS).isEmpty();
        if (!any) {
            return Optional.empty();
        }
        Optional<LocalDate> day = input.day(DAY, "The day of the certificate");
        if (day.isEmpty() && !input.hasProblem(DAY)) {
            input.refuse(DAY, "A certificate has a day.");
        }
        Optional<Double> furocoumarins = input.number(FUROCOUMARINS, "Furocoumarins", "0", "1000000");
        List<MaximumUse> maxima = new ArrayList<>();
        for (String line : lines) {
            use(line, input).ifPresent(maxima::add);
        }
        return input.isSound()
                ? day.map(known -> new FragranceCertificate(known, input.text(STANDARD), maxima, furocoumarins))
                : Optional.empty();
    }

    private static Optional<MaximumUse> use(String line, Input input) {
        String[] parts = line.split(":", -1);
        if (parts.length != 3) {
            return input.refuse(MAXIMA, "\"" + line + "\" is not written as category: product types: percent.");
        }
        Set<ProductType> types = new LinkedHashSet<>();
        for (String word : parts[1].split(",")) {
            Optional<ProductType> type = type(word.strip());
            if (type.isEmpty()) {
                return input.refuse(
                        MAXIMA, "\"" + word.strip() + "\" is no product type; they are " + typeWords() + ".");
            }
            types.add(type.get());
        }
        try {
            return Optional.of(new MaximumUse(
                    parts[0].strip(), types, Percent.of(parts[2].strip().replace(',', '.'))));
        } catch (IllegalArgumentException refused) {
            return input.refuse(MAXIMA, "\"" + parts[2].strip() + "\" is no percentage from 0 to 100.");
        }
    }

    private static Optional<ProductType> type(String word) {
        for (ProductType type : ProductType.values()) {
            if (word(type).equals(word.toLowerCase(Locale.ROOT).replace(' ', '-'))) {
                return Optional.of(type);
            }
        }
        return Optional.empty();
    }

    private static String word(ProductType type) {
        return type.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** All product types as they are written in the form. */
    static String typeWords() {
        return List.of(ProductType.values()).stream()
                .map(CertificateFields::word)
                .collect(Collectors.joining(", "));
    }
}
