package stillroom.desk.materials;

import java.util.ArrayList;
import java.util.List;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Strength;

/** The facts of one card in words, in the order in which they are shown. */
final class CardFacts {
    static final String CERTIFICATE = "Certificate of the perfume";

    private final Material card;
    private final List<FactRow> rows = new ArrayList<>();

    private CardFacts(Material card) {
        this.card = card;
    }

    static List<FactRow> of(Material card) {
        CardFacts facts = new CardFacts(card);
        facts.add(Fact.FUNCTIONS, String.join(", ", card.functions()));
        facts.add(Fact.STRENGTH, card.strength().map(CardFacts::strength).orElse(""));
        facts.add(Fact.USAGE, card.usage().map(Words::range).orElse(""));
        facts.add(Fact.WORKING_PH, card.workingPh().map(Words::interval).orElse(""));
        facts.add(Fact.OWN_PH, card.ownPh().map(Words::interval).orElse(""));
        facts.add(
                Fact.DENSITY,
                card.densityGramsPerMillilitre()
                        .map(figure -> Words.plain(figure) + " g/ml")
                        .orElse(""));
        facts.add(Fact.SOLUBILITY, card.solubility());
        facts.add(
                Fact.MAX_CELSIUS,
                card.maxCelsius().map(figure -> Words.plain(figure) + " °C").orElse(""));
        facts.add(
                Fact.NATURAL_ORIGIN, card.naturalOriginIndex().map(Words::plain).orElse(""));
        card.certificate()
                .ifPresent(known -> facts.rows.add(
                        new FactRow(CERTIFICATE, CertificateFields.words(known), "the certificate itself")));
        facts.add(Fact.NOTE, card.note());
        return List.copyOf(facts.rows);
    }

    static String strength(Strength strength) {
        return Words.range(strength.percent()) + " " + strength.of() + ", as " + Words.basis(strength.basis());
    }

    private void add(Fact fact, String value) {
        if (!value.isEmpty()) {
            rows.add(new FactRow(fact.words(), value, card.sources().getOrDefault(fact.component(), "")));
        }
    }
}
