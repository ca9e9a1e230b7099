package stillroom.desk.trace;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.batches.Masses;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.formulary.batch.BatchStage;
import stillroom.formulary.concern.Concern;
import stillroom.formulary.concern.Units;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.rule.Rule;
import stillroom.ledger.trace.Reach;
import stillroom.ledger.trace.Reach.ReachedBatch;
import stillroom.ledger.trace.Reach.ReachedLot;
import stillroom.ledger.trace.Sources;
import stillroom.ledger.trace.TraceStart;

/** Turns what a trace found into what is shown. */
final class ImpactView {
    private final Desk desk;
    private final MaterialBook book;

    ImpactView(Desk desk) {
        this.desk = desk;
        this.book = desk.ledger().materials().book();
    }

    Impact impact(TraceAsk ask, TraceStart start) {
        Reach reach = desk.ledger().traces().reach(start);
        return new Impact(
                ask.about(),
                reach.lots().stream().map(this::lot).toList(),
                reach.batches().stream().map(ImpactView::batch).toList(),
                holders(reach),
                totals(reach),
                todo(reach, ask.rule()),
                sources(start),
                !openOnes(reach).isEmpty() || (holdsLots(start.kind()) && freeLots(reach) > 0));
    }

    /** What a hold stops: batches that are not finished and not on hold yet, and released ones that have units left. */
    static List<ReachedBatch> openOnes(Reach reach) {
        return reach.batches().stream()
                .filter(one -> one.concerns().stop(Concern.Stop.HOLD).isEmpty())
                .filter(one -> !one.row().stage().finished()
                        || (one.row().stage() == BatchStage.RELEASED
                                && one.units().onShelf() > 0))
                .toList();
    }

    /** Whether the lots themselves are in doubt, and not only what was done at some bench or on some day. */
    static boolean holdsLots(TraceStart.Kind kind) {
        return kind == TraceStart.Kind.LOT || kind == TraceStart.Kind.BATCH || kind == TraceStart.Kind.SUPPLIER;
    }

    private static long freeLots(Reach reach) {
        return reach.lots().stream()
                .flatMap(lot -> lot.stocked().stream())
                .filter(lot -> lot.lot().state() == Lot.State.RELEASED)
                .count();
    }

    private Impact.Lot lot(ReachedLot lot) {
        return new Impact.Lot(
                lot.code(),
                lot.stocked().isPresent() ? "/lots/" + lot.code() : "",
                lot.stocked().map(one -> name(one.lot().materialKey())).orElse("not booked"),
                lot.made() ? "made here" : "bought",
                lot.stocked().map(one -> Masses.shown(one.onHand()) + " g").orElse(""),
                lot.stocked().map(one -> Format.words(one.lot().state())).orElse(""));
    }

    private String name(String materialKey) {
        return book.material(materialKey).map(Material::name).orElse(materialKey);
    }

    private static Impact.Batch batch(ReachedBatch one) {
        Units units = one.units();
        List<String> seen = new ArrayList<>();
        if (!one.concerns().complaints().isEmpty()) {
            seen.add(one.concerns().complaints().size() + " complaints");
        }
        if (!one.concerns().reactions().isEmpty()) {
            seen.add(one.concerns().reactions().size() + " skin reactions");
        }
        one.concerns()
                .samples()
                .forEach(sample -> seen.add(sample.concern().units() + " retained, "
                        + sample.concern().where()));
        return new Impact.Batch(
                one.row().batch().code(),
                "/batches/" + one.row().batch().id() + "/units",
                one.row().productName(),
                one.row().stage().words(),
                Format.style(one.row().stage()),
                one.direct().isZero() ? "" : Masses.shown(one.direct()) + " g",
                Integer.toString(units.filled()),
                units.onShelf() + (units.counted().isPresent() ? " counted" : ""),
                Integer.toString(units.out()),
                Integer.toString(units.withdrawn()),
                percent(units.reconciledPercent()),
                String.join("; ", seen));
    }

    private static List<Impact.Holder> holders(Reach reach) {
        List<Impact.Holder> holders = new ArrayList<>();
        for (ReachedBatch one : reach.batches()) {
            for (Map.Entry<String, Integer> at : one.units().at().entrySet()) {
                holders.add(new Impact.Holder(
                        at.getKey().isEmpty() ? "nobody named" : at.getKey(),
                        one.row().batch().code(),
                        Integer.toString(at.getValue())));
            }
        }
        holders.sort(java.util.Comparator.comparing(Impact.Holder::name));
        return holders;
    }

    private static Impact.Totals totals(Reach reach) {
        int filled = 0;
        int shelf = 0;
        int out = 0;
        int withdrawn = 0;
        int accounted = 0;
        for (ReachedBatch one : reach.batches()) {
            filled += one.units().filled();
            shelf += one.units().onShelf();
            out += one.units().out();
            withdrawn += one.units().withdrawn();
            accounted += one.units().accountedFor();
        }
        Optional<BigDecimal> percent = filled == 0
                ? Optional.empty()
                : Optional.of(
                        BigDecimal.valueOf(100L * accounted).divide(BigDecimal.valueOf(filled), MathContext.DECIMAL32));
        return new Impact.Totals(
                Integer.toString(filled),
                Integer.toString(shelf),
                Integer.toString(out),
                Integer.toString(withdrawn),
                Integer.toString(accounted),
                percent(percent));
    }

    private static String percent(Optional<BigDecimal> percent) {
        return percent.map(p -> Format.decimal(p, 1) + " %").orElse("");
    }

    /** The maker's next steps, each with its day. A recall begins at once; a new law has days of its own. */
    private List<String> todo(Reach reach, Optional<Rule> rule) {
        List<String> todo = new ArrayList<>();
        LocalDate today = desk.today();
        String now = "Today, " + Format.day(today) + ": ";
        rule.ifPresent(row -> law(row, todo));
        long bulk = openOnes(reach).stream()
                .filter(one -> !one.row().stage().finished())
                .count();
        if (bulk > 0) {
            todo.add(now + "put " + bulk + (bulk == 1 ? " open batch" : " open batches") + " on hold.");
        }
        long free = freeLots(reach);
        if (free > 0) {
            todo.add(now + "put " + free + (free == 1 ? " lot" : " lots") + " into quarantine.");
        }
        uncounted(reach).ifPresent(codes -> todo.add(now + "take units off the shelf and count them: " + codes + "."));
        long out = reach.batches().stream()
                .filter(one -> one.units().out() > 0)
                .flatMap(one -> one.units().at().keySet().stream())
                .distinct()
                .count();
        if (out > 0) {
            todo.add("If it comes to a recall, by tomorrow, " + Format.day(today.plusDays(1)) + ": tell the " + out
                    + " who have units, and ask for them back.");
        }
        if (reach.batches().stream().anyMatch(one -> one.units().at().containsKey(""))) {
            todo.add("Some units went to nobody named: find out who has them.");
        }
        return todo;
    }

    private static Optional<String> uncounted(Reach reach) {
        List<String> codes = reach.batches().stream()
                .filter(one ->
                        one.units().onShelf() > 0 && one.units().counted().isEmpty())
                .map(one -> one.row().batch().code())
                .limit(12)
                .toList();
        return codes.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", codes));
    }

    private void law(Rule rule, List<String> todo) {
        rule.span()
                .from()
                .filter(day -> day.isAfter(desk.today()))
                .ifPresent(day -> todo.add(
                        "By " + Format.day(day) + ": every batch placed on the market satisfies " + rule.id() + "."));
        rule.span()
                .stockUntil()
                .ifPresent(day -> todo.add("By " + Format.day(day) + ": older stock is sold or taken off the shelf."));
        if (!rule.isRead()) {
            todo.add("Read the legal text: this row was entered from memory.");
        }
    }

    private List<Impact.Source> sources(TraceStart start) {
        if (start.names().size() != 1) {
            return List.of();
        }
        String name = start.names().get(0);
        return switch (start.kind()) {
            case BATCH -> sources(desk.ledger().traces().sourcesOfBatch(name));
            case LOT -> sources(desk.ledger().traces().sourcesOfLot(name));
            case PACK_LOT, VESSEL, BALANCE, PERSON, SUPPLIER, MATERIAL, TIME -> List.of();
        };
    }

    private List<Impact.Source> sources(Sources sources) {
        List<Impact.Source> all = new ArrayList<>();
        sources.batchCodes()
                .forEach(code -> all.add(new Impact.Source(
                        code, "/trace?kind=BATCH&q=" + Encoded.of(code), "bulk or lot of this batch", "", false)));
        sources.lots()
                .forEach(lot -> all.add(new Impact.Source(
                        lot.code(),
                        "/trace?kind=LOT&q=" + Encoded.of(lot.code()),
                        lot.materialKey().isEmpty() ? "not booked" : name(lot.materialKey()),
                        (lot.supplier() + " " + lot.supplierLot()).strip(),
                        lot.raw())));
        return all;
    }
}
