package stillroom.desk.batches.cost;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.batches.BatchHead;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.cost.CostPage.Part;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;
import stillroom.formulary.batch.BatchCost;
import stillroom.formulary.batch.CostSheet;
import stillroom.formulary.batch.Yield;
import stillroom.formulary.quantity.Money;

/** Puts the page of the cost together. */
final class CostView {
    private final BatchWork work;
    private final Costing costing;
    private final CostSheet sheet;
    private final BatchCost cost;

    CostView(BatchWork work) {
        this.work = work;
        this.costing = new Costing(work.desk());
        this.sheet = costing.sheet(work);
        this.cost = costing.cost(work, sheet);
    }

    CostPage page(Frame frame, Optional<Typed> typed) {
        return new CostPage(
                frame,
                BatchHead.of(work),
                typed.orElseGet(() -> new Typed(fields(), List.of())),
                work.desk().ledger().settings().read().currency(),
                sheet.withTax() ? "All prices with value-added tax." : "All prices without value-added tax.",
                parts(),
                cost.total().shown(),
                cost.containers(),
                cost.perContainer().map(Money::shown).orElse(""),
                lost(),
                sheet.marginPercent().toPlainString(),
                cost.priceForMargin(sheet.marginPercent()).map(Money::shown).orElse(""),
                cost.unpriced().stream().map(work.cards()::name).toList(),
                costing.packEach(work.state()).shown(),
                sheet.withTax(),
                sheet.carriesRejected());
    }

    private Map<String, String> fields() {
        Map<String, String> fields = new HashMap<>();
        sheet.packEach().ifPresent(each -> fields.put("pack", each.value().toPlainString()));
        fields.put("minutes", Integer.toString(sheet.labourMinutes()));
        fields.put("hour", sheet.labourPerHour().value().toPlainString());
        fields.put("overhead", sheet.overhead().value().toPlainString());
        fields.put("margin", sheet.marginPercent().toPlainString());
        return fields;
    }

    private List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        cost.byMaterial().entrySet().stream()
                .sorted(Map.Entry.<String, Money>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .forEach(one -> parts.add(part(
                        work.cards().name(one.getKey()),
                        one.getValue(),
                        "/costs?material=" + one.getKey() + "&percent=20")));
        parts.add(part("Containers", cost.packs(), ""));
        parts.add(part("Labour", cost.labour(), ""));
        parts.add(part("Overhead", cost.overhead(), ""));
        parts.add(part("Share of rejected batches", cost.rejected(), ""));
        return parts;
    }

    private Part part(String name, Money amount, String rise) {
        BigDecimal total = cost.total().value();
        int percent = total.signum() == 0
                ? 0
                : amount.value()
                        .movePointRight(2)
                        .divide(total, MathContext.DECIMAL32)
                        .setScale(0, RoundingMode.HALF_EVEN)
                        .intValue();
        String each = cost.containers() == 0
                ? ""
                : new Money(amount.value().divide(BigDecimal.valueOf(cost.containers()), MathContext.DECIMAL64))
                        .shown();
        return new Part(name, amount.shown(), each, percent, rise);
    }

    /** Material that is in no container: samples, what stayed on walls, what was retained. It is paid for all the same. */
    private String lost() {
        Yield yield = Yield.of(work.state());
        if (yield.added().signum() <= 0) {
            return "";
        }
        var out = yield.added().minus(yield.evaporated()).minus(yield.filled());
        if (out.signum() <= 0) {
            return "";
        }
        return Format.reckonedGrams(out) + " g of it are in no container (loss, samples, retained): "
                + cost.materialOf(out, yield.added()).shown() + " of the material.";
    }
}
