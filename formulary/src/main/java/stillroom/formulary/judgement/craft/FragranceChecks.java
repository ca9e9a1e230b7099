package stillroom.formulary.judgement.craft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.judgement.claim.ClaimsGate;
import stillroom.formulary.judgement.craft.Perfumes.Perfume;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Words;
import stillroom.formulary.material.FragranceCertificate;
import stillroom.formulary.material.FragranceCertificate.MaximumUse;

/** Perfumes against their certificates, decided at the upper end of a range; and what light makes of citrus oils. */
final class FragranceChecks {
    private static final double DUST = 1e-9;
    /** After this a certificate is worth asking for again. */
    private static final int FRESH_MONTHS = 24;
    /** In sun protection and bronzing products; Annex II, entry 358 of Regulation (EC) No 1223/2009, read. */
    private static final double FUROCOUMARINS_MG_PER_KG = 1;

    private FragranceChecks() {}

    static void certificates(Pot pot, Consumer<Finding> report) {
        List<Perfume> without = new ArrayList<>();
        for (Perfume perfume : Perfumes.of(pot)) {
            Optional<FragranceCertificate> certificate = perfume.card().certificate();
            if (certificate.isEmpty() && isCompounded(pot, perfume)) {
                without.add(perfume);
            }
            certificate.ifPresent(known -> judge(pot, perfume, known, report));
        }
        if (!without.isEmpty()) {
            report.accept(new Finding(
                    Finding.Kind.CANNOT_JUDGE,
                    "fragrance.no-certificate",
                    CraftChecks.PRACTICE,
                    without.stream()
                            .flatMap(perfume -> perfume.lines().stream())
                            .toList(),
                    List.of(),
                    "Cannot judge how much may be used: no certificate on the card of "
                            + Words.list(without.stream()
                                    .map(perfume -> perfume.card().name())
                                    .toList())
                            + ".",
                    "Ask the supplier for the highest use by product category, and enter it with its date."));
        }
    }

    /** A perfume whose parts are the supplier's secret, unlike an oil by its botanical name. */
    private static boolean isCompounded(Pot pot, Perfume perfume) {
        return perfume.card().composition().stream()
                .flatMap(part -> pot.book().substance(part.substance()).stream())
                .anyMatch(substance -> substance.is("fragrance")
                        && (substance.casNumbers().isEmpty()
                                || substance.is("allergen-2003")
                                || substance.is("allergen-2023")));
    }

    private static void judge(Pot pot, Perfume perfume, FragranceCertificate certificate, Consumer<Finding> report) {
        Optional<MaximumUse> maximum = certificate.maximumFor(pot.brief().type());
        if (maximum.isPresent()) {
            use(perfume, certificate, maximum.get()).ifPresent(report);
        } else {
            report.accept(new Finding(
                    Finding.Kind.CANNOT_JUDGE,
                    "fragrance.category",
                    source(certificate),
                    perfume.lineIds(),
                    List.of(),
                    "Cannot judge how much may be used: the certificate of "
                            + perfume.card().name() + " gives no highest use for "
                            + pot.brief().type().words() + ".",
                    "Ask for that category, or leave the perfume out."));
        }
        if (certificate.issuedOn().plusMonths(FRESH_MONTHS).isBefore(pot.asOf())) {
            report.accept(new Finding(
                    Finding.Kind.LOOK_AT_THIS,
                    "fragrance.old-certificate",
                    CraftChecks.PRACTICE,
                    perfume.lineIds(),
                    List.of(),
                    "The certificate of " + perfume.card().name() + " is of " + certificate.issuedOn()
                            + "; standards and law have moved since.",
                    "Ask the supplier for the present one."));
        }
    }

    private static Optional<Finding> use(Perfume perfume, FragranceCertificate certificate, MaximumUse maximum) {
        double highest = maximum.highest().massFraction();
        double upper = perfume.share().upper();
        if (upper <= highest * (1 + DUST)) {
            return Optional.empty();
        }
        boolean open = perfume.share().nominal() <= highest * (1 + DUST);
        return Optional.of(new Finding(
                Finding.Kind.PROBABLE_FAULT,
                "fragrance.maximum",
                source(certificate),
                perfume.lineIds(),
                List.of(
                        new Figure(
                                "In the product",
                                perfume.share().lower() * 100,
                                perfume.share().nominal() * 100,
                                upper * 100,
                                "%",
                                "as added, over all lines and premixes",
                                List.of()),
                        Figure.exactly(
                                "Highest use",
                                highest * 100,
                                "%",
                                "category " + maximum.category() + " of the certificate")),
                perfume.card().name() + " is at " + (open ? "up to " : "") + Words.percent(upper)
                        + "; its certificate allows " + Words.percent(highest) + " in category " + maximum.category()
                        + (open ? ". The upper end of the range decides." : "."),
                "At most " + Words.percent(highest) + " of it."));
    }

    private static String source(FragranceCertificate certificate) {
        String standard = certificate.standard().isEmpty() ? "" : ", " + certificate.standard();
        return "certificate of " + certificate.issuedOn() + standard;
    }

    /** Furocoumarins of all oils together: limited by law in sun products, a caution in whatever stays on the skin. */
    static void furocoumarins(Pot pot, Consumer<Finding> report) {
        List<Perfume> bring = Perfumes.of(pot).stream()
                .filter(perfume -> perfume.furocoumarinsMilligramsPerKilogram() > 0)
                .toList();
        double sum = bring.stream()
                .mapToDouble(Perfume::furocoumarinsMilligramsPerKilogram)
                .sum();
        if (sum < FUROCOUMARINS_MG_PER_KG) {
            return;
        }
        boolean sun = pot.rules().law(pot.brief().market()).stream()
                        .anyMatch(law -> !law.naming("bergapten").isEmpty())
                && new ClaimsGate(pot.rules())
                        .judge(pot.brief()).governed().stream()
                                .anyMatch(hit -> hit.claim().id().equals("claims.sun-protection"));
        if (sun || pot.brief().type().leaveOn()) {
            report.accept(finding(bring, sum, sun));
        }
    }

    /** Perfume on the youngest is allowed, but asks for a reason. */
    static void youngest(Pot pot, Consumer<Finding> report) {
        List<Perfume> perfumes =
                pot.brief().people().contains(Brief.People.UNDER_3_YEARS) ? Perfumes.of(pot) : List.of();
        if (!perfumes.isEmpty()) {
            report.accept(new Finding(
                    Finding.Kind.LOOK_AT_THIS,
                    "fragrance.under-three",
                    CraftChecks.PRACTICE,
                    perfumes.stream()
                            .flatMap(perfume -> perfume.lines().stream())
                            .distinct()
                            .toList(),
                    List.of(),
                    Words.list(perfumes.stream()
                                    .map(perfume -> perfume.card().name())
                                    .toList())
                            + " in a product for children under 3 years: their skin is thin and sensitises early, and oils"
                            + " with menthol, camphor or eucalyptol can hinder their breathing.",
                    "Leave it out, or ask the assessor, who judges products for this age by themselves."));
        }
    }

    private static Finding finding(List<Perfume> bring, double sum, boolean sun) {
        return new Finding(
                sun ? Finding.Kind.BREACH : Finding.Kind.LOOK_AT_THIS,
                "fragrance.furocoumarins",
                "Annex II, entry 358 (cosing-annex-ii-2026, read 2026-11-25)",
                bring.stream()
                        .flatMap(perfume -> perfume.lines().stream())
                        .distinct()
                        .toList(),
                List.of(
                        Figure.exactly("Furocoumarins", sum, "mg/kg", "upper end, of certificates, else of the cards"),
                        Figure.exactly("Sun products", FUROCOUMARINS_MG_PER_KG, "mg/kg", "must lie below")),
                Words.list(bring.stream().map(perfume -> perfume.card().name()).toList())
                        + " bring up to " + Words.figure(sum) + " mg/kg furocoumarins, which burn the skin in sunlight"
                        + (sun ? "; in sun protection and bronzing products they must be below 1 mg/kg." : "."),
                "Use a furocoumarin-free grade, or less of it.");
    }
}
