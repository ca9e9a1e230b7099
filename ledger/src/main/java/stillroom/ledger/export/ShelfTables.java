package stillroom.ledger.export;

import java.io.IOException;
import java.util.List;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.ledger.lot.LotBook;
import stillroom.ledger.material.MaterialShelf;

/** The maker's cards with their compositions, and the lots on the shelf. */
record ShelfTables(Csv csv, MaterialShelf shelf, LotBook book, CardNames names) {
    void write() throws IOException {
        materials();
        compositions();
        lots();
    }

    /** The maker's own cards, newest revisions; starter cards are in the program. */
    private void materials() throws IOException {
        csv.table(
                "materials",
                List.of(
                        "key",
                        "revision",
                        "revised_on",
                        "name",
                        "family",
                        "functions",
                        "strength_low",
                        "strength_high",
                        "strength_basis",
                        "paid",
                        "for_grams",
                        "supplier",
                        "grade",
                        "note"),
                table -> shelf.own().forEach(card -> table.writeRecord(materialRow(card))));
    }

    private static List<String> materialRow(Material card) {
        return List.of(
                card.key(),
                Integer.toString(card.revision()),
                card.revisedOn().toString(),
                Csv.safe(card.name()),
                Csv.word(card.family()),
                Csv.safe(String.join("; ", card.functions())),
                card.strength().map(one -> one.percent().low().toString()).orElse(""),
                card.strength().map(one -> one.percent().high().toString()).orElse(""),
                card.strength().map(one -> Csv.word(one.basis())).orElse(""),
                card.price().map(Csv::paid).orElse(""),
                card.price().map(price -> price.amount().toString()).orElse(""),
                Csv.safe(card.supplier()),
                Csv.safe(card.grade()),
                Csv.safe(card.note()));
    }

    private void compositions() throws IOException {
        csv.table(
                "compositions",
                List.of("material_key", "substance", "low_percent", "percent", "high_percent", "role"),
                table -> shelf.own()
                        .forEach(card ->
                                card.composition().forEach(part -> table.writeRecord(compositionRow(card, part)))));
    }

    private static List<String> compositionRow(Material card, Constituent part) {
        return List.of(
                card.key(),
                Csv.safe(part.substance()),
                Csv.percent(part.massFraction().lower()),
                Csv.percent(part.massFraction().nominal()),
                Csv.percent(part.massFraction().upper()),
                Csv.word(part.role()));
    }

    private void lots() throws IOException {
        csv.table(
                "lots",
                List.of(
                        "code",
                        "material",
                        "material_key",
                        "supplier_lot",
                        "supplier",
                        "received_grams",
                        "received_on",
                        "opened",
                        "best_before",
                        "state",
                        "on_hand_grams",
                        "paid",
                        "for_grams",
                        "note"),
                table -> book.all().forEach(stocked -> {
                    Lot lot = stocked.lot();
                    table.writeRecord(List.of(
                            Csv.safe(lot.code()),
                            Csv.safe(names.of(lot.materialKey())),
                            lot.materialKey(),
                            Csv.safe(lot.supplierLot()),
                            Csv.safe(lot.supplier()),
                            lot.received().toString(),
                            lot.receivedOn().toString(),
                            Csv.plain(lot.opened()),
                            Csv.plain(lot.expires()),
                            Csv.word(lot.state()),
                            stocked.onHand().toString(),
                            lot.price().map(Csv::paid).orElse(""),
                            lot.price().map(price -> price.amount().toString()).orElse(""),
                            Csv.safe(lot.note())));
                }));
    }
}
