package stillroom.desk.materials;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame.Section;
import stillroom.formulary.evaluation.Composition;
import stillroom.formulary.evaluation.SubstanceShare;
import stillroom.formulary.judgement.pot.Opened;
import stillroom.formulary.material.CardsInside;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;
import stillroom.ledger.Ledger;
import stillroom.ledger.lot.StockedLot;

/** Builds the page of one card. */
final class CardView {
    private static final Comparator<Constituent> LARGEST_FIRST = Comparator.comparingDouble(
                    (Constituent part) -> part.massFraction().nominal())
            .reversed();

    private final Desk desk;
    private final Ledger ledger;
    private final Material card;
    private final Inci inci;

    private CardView(Desk desk, Material card, MaterialBook book) {
        this.desk = desk;
        this.ledger = desk.ledger();
        this.card = card;
        this.inci = new Inci(book);
    }

    static CardPage page(Desk desk, Context request, Material card, MaterialBook book) {
        return new CardView(desk, card, book).page(request);
    }

    private CardPage page(Context request) {
        String currency = ledger.settings().read().currency();
        Impact impact = Impact.of(ledger, card.key());
        return new CardPage(
                desk.frame(request, card.name(), Section.SHELF),
                card,
                inci.labelNames(card),
                origin(),
                CardFacts.of(card),
                card.composition().stream()
                        .sorted(LARGEST_FIRST)
                        .map(this::part)
                        .toList(),
                opened(),
                unopened(),
                stated(),
                source(Fact.COMPOSITION),
                source(Fact.CAUTIONS),
                card.price().map(price -> Words.price(price, currency)).orElse(""),
                ledger.lots().ofMaterial(card.key()).stream().map(this::lot).toList(),
                Format.grams(ShelfStock.of(ledger.lots(), desk.today()).onHand(card.key())) + " g",
                CardHistory.of(revisions(), inci, currency),
                impact);
    }

    private boolean isOwn() {
        return ledger.materials().own().stream().anyMatch(own -> own.key().equals(card.key()));
    }

    private String origin() {
        return isOwn()
                ? "Your own card, revision " + card.revision() + " of " + Format.day(card.revisedOn()) + "."
                : "A card of the starter library, as of " + Format.day(card.revisedOn())
                        + ". Editing it makes a card of your own.";
    }

    private List<Material> revisions() {
        List<Material> stored = new ArrayList<>(ledger.materials().revisions(card.key()));
        if (stored.stream().noneMatch(revision -> revision.revision() == 1)) {
            ledger.materials().card(card.key(), 1).ifPresent(starter -> stored.add(0, starter));
        }
        return stored;
    }

    private String source(Fact fact) {
        return card.sources().getOrDefault(fact.component(), "");
    }

    private CardPage.Part part(Constituent part) {
        Optional<Substance> substance = inci.substance(part.substance());
        return new CardPage.Part(
                inci.name(part.substance()),
                substance.map(known -> String.join(", ", known.casNumbers())).orElse(""),
                Words.share(part.massFraction()),
                Words.role(part.role()),
                substance
                        .map(known -> Words.charge(known.charge()))
                        .orElse(CardsInside.key(part.substance()).isPresent() ? "" : "not known"),
                substance
                        .flatMap(Substance::molarMassGramsPerMol)
                        .map(Words::plain)
                        .orElse(""),
                CardsInside.key(part.substance())
                        .map(key -> "/materials/" + key)
                        .orElse(""));
    }

    private boolean holdsCards() {
        return !CardsInside.keys(card).isEmpty();
    }

    private List<CardPage.Opened> opened() {
        return holdsCards() ? substances().shares().stream().map(this::opened).toList() : List.of();
    }

    private Composition substances() {
        return Opened.substances(card.key(), inci.book());
    }

    private CardPage.Opened opened(SubstanceShare share) {
        MassFraction fraction = share.asAdded();
        return new CardPage.Opened(
                inci.name(share.substance()),
                inci.substance(share.substance())
                        .map(known -> String.join(", ", known.casNumbers()))
                        .orElse(""),
                Words.rounded(fraction.lower()),
                Words.rounded(fraction.nominal()),
                Words.rounded(fraction.upper()),
                Words.role(share.role()));
    }

    private String unopened() {
        List<String> unknown = holdsCards() ? substances().unknown() : List.of();
        return unknown.isEmpty()
                ? ""
                : "Not opened, because nothing is known of what is in it: "
                        + unknown.stream().map(inci.cards()::name).collect(Collectors.joining(", ")) + ".";
    }

    private String stated() {
        if (card.composition().isEmpty()) {
            return "Not known. Until it is, this material counts as \"cannot judge\", never as pure.";
        }
        double nominal = card.composition().stream()
                .mapToDouble(part -> part.massFraction().nominal())
                .sum();
        double rounded = Math.round(nominal * 1e6) / 1e6;
        return rounded >= 1 ? "" : "The shares add up to " + Words.percent(rounded) + " %; the rest is not stated.";
    }

    private CardPage.LotRow lot(StockedLot stocked) {
        Lot lot = stocked.lot();
        String state = lot.expiredOn(desk.today()) ? ", expired" : "";
        return new CardPage.LotRow(
                lot.code(),
                Format.grams(stocked.onHand()) + " g",
                lot.expires().map(Format::day).orElse("no date"),
                Format.words(lot.state()) + state);
    }
}
