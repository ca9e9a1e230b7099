package stillroom.desk.lots;

import io.javalin.http.Context;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stillroom.desk.lots.LotPages.Count;
import stillroom.desk.lots.LotPages.LotPage;
import stillroom.desk.lots.LotPages.Stocked;
import stillroom.desk.lots.LotPages.Use;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Typed;
import stillroom.formulary.material.Certificate;
import stillroom.formulary.material.CertificateCheck;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Strength;
import stillroom.formulary.material.WaterLot;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Price;
import stillroom.ledger.Ledger;
import stillroom.ledger.batch.LotUse;
import stillroom.ledger.lot.Stock;
import stillroom.ledger.lot.StockCount;
import stillroom.ledger.lot.StockedLot;

/** Builds the page of one lot. */
record LotView(Desk desk, StockedLot stocked) {
    /** The page as the lot stands. */
    LotPage page(Context request) {
        return page(request, new Typed(fields(stocked.lot()), List.of()), Typed.NOTHING, "");
    }

    LotPage page(Context request, Typed facts, Typed count, String conflict) {
        Ledger ledger = desk.ledger();
        Lot lot = stocked.lot();
        String currency = ledger.settings().read().currency();
        return new LotPage(
                desk.frame(request, "Lot " + lot.code(), Section.SHELF),
                lot,
                ledger.materials()
                        .book()
                        .material(lot.materialKey())
                        .map(Material::name)
                        .orElse(lot.materialKey()),
                stock(stocked.stock()),
                LotWords.expiry(lot, desk.today()),
                lot.price().map(price -> priceWords(price, currency)).orElse("not said"),
                lot.expiredOn(desk.today()),
                Seen.of(lot),
                conflict,
                facts,
                count,
                Choice.of(Lot.State.class, LotWords::state),
                ledger.lots().counts(lot.code()).stream().map(this::count).toList(),
                ledger.batches().holding(lot.code()).stream().map(LotView::use).toList(),
                currency,
                ledger.materials()
                        .book()
                        .material(lot.materialKey())
                        .filter(card -> card.family() == Family.WATER)
                        .isPresent(),
                water(lot),
                ledger.materials()
                        .book()
                        .material(lot.materialKey())
                        .map(card -> CertificateCheck.of(card, lot))
                        .orElse(List.of()));
    }

    private List<String> water(Lot lot) {
        return WaterRoutes.drawer(desk).read(lot.code()).map(LotView::water).orElse(List.of());
    }

    private static List<String> water(WaterLot water) {
        List<String> says = new ArrayList<>();
        if (!water.source().isBlank()) {
            says.add("Source: " + water.source());
        }
        water.drawnOn().ifPresent(day -> says.add("Drawn on " + Format.day(day)));
        water.microsiemensPerCentimetre()
                .ifPresent(value -> says.add("Conductivity " + Format.figure(value, 1) + " µS/cm"));
        if (!water.count().isBlank()) {
            says.add("Last count " + water.count() + " CFU/ml"
                    + water.countedOn().map(day -> ", " + Format.day(day)).orElse(""));
        }
        says.add(water.heat().isBlank() ? "No heat treatment is noted" : "Heat: " + water.heat());
        return says;
    }

    /** A lot as the fields of its form. */
    static Map<String, String> fields(Lot lot) {
        Map<String, String> fields = new HashMap<>();
        fields.put("supplier", lot.supplier());
        fields.put("supplier-lot", lot.supplierLot());
        fields.put("opened", lot.opened().map(Object::toString).orElse(""));
        fields.put("expires", lot.expires().map(Object::toString).orElse(""));
        fields.put(
                "paid",
                lot.price().map(price -> price.paid().value().toPlainString()).orElse(""));
        fields.put(
                "paid-grams",
                lot.price().map(price -> price.amount().toString()).orElse(""));
        fields.put("retest", lot.retest().map(Object::toString).orElse(""));
        lot.certificate().ifPresent(certificate -> fields.putAll(fields(certificate)));
        fields.put("state", lot.state().name());
        fields.put("note", lot.note());
        return fields;
    }

    private static Map<String, String> fields(Certificate certificate) {
        Map<String, String> fields = new HashMap<>();
        certificate.strength().ifPresent(strength -> {
            fields.put("strength", middle(strength).toPlainString());
            fields.put("basis", strength.basis().name());
        });
        certificate.ownPh().ifPresent(pH -> fields.put("lot-ph", Double.toString(pH)));
        certificate.densityGramsPerMillilitre().ifPresent(d -> fields.put("lot-density", Double.toString(d)));
        fields.put("certificate", certificate.document());
        return fields;
    }

    /** The middle of what is stated, to eight digits as it is typed [%]. */
    static BigDecimal middle(Strength strength) {
        return strength.percent()
                .middle()
                .value()
                .round(new MathContext(8, RoundingMode.HALF_EVEN))
                .stripTrailingZeros();
    }

    private static Stocked stock(Stock stock) {
        return new Stocked(stock.received(), stock.poured(), stock.counted(), stock.onHand());
    }

    private static String priceWords(Price price, String currency) {
        return price.paid().shown() + " " + currency + " for " + price.amount() + " g ("
                + price.of(Grams.of("1000")).shown() + " " + currency + " per kg)";
    }

    private Count count(StockCount count) {
        String sign = count.correction().signum() > 0 ? "+" : "";
        return new Count(
                Format.moment(count.at(), desk.zone()),
                count.by(),
                Format.grams(count.found()) + " g",
                sign + Format.grams(count.correction()) + " g",
                count.reason());
    }

    private static Use use(LotUse use) {
        return new Use(
                use.row().batch().id(),
                use.row().batch().code(),
                use.row().productName(),
                use.row().stage().words(),
                Format.grams(use.mass()) + " g");
    }
}
