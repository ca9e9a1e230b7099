package stillroom.desk.today;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.papers.PaperBook;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;
import stillroom.desk.today.TodayPage.LotRow;
import stillroom.desk.today.TodayPage.PaperRow;
import stillroom.desk.today.TodayPage.Row;
import stillroom.formulary.batch.BatchStage;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.ledger.batch.BatchRow;
import stillroom.ledger.lot.StockedLot;

/** Puts the start page together: what is due first. */
final class TodayView {
    private static final int SOON_DAYS = 30;
    private static final int MOST = 12;

    private final Desk desk;
    private final Instant now;
    private final LocalDate today;

    TodayView(Desk desk) {
        this.desk = desk;
        this.now = desk.now();
        this.today = desk.today();
    }

    TodayPage page(Frame frame, Typed typed) {
        List<Row> due = new ArrayList<>();
        List<Row> resting = new ArrayList<>();
        List<Row> atWork = new ArrayList<>();
        List<Row> filled = new ArrayList<>();
        for (BatchRow row : desk.ledger().batches().unfinished()) {
            place(row, due, resting, atWork, filled);
        }
        int shown = Math.min(MOST, atWork.size()) + Math.min(MOST, filled.size());
        return new TodayPage(
                frame,
                isFirst(frame),
                typed,
                due,
                resting,
                atWork.stream().limit(MOST).toList(),
                filled.stream().limit(MOST).toList(),
                expiring(),
                papers(),
                atWork.size() + filled.size() - shown);
    }

    private boolean isFirst(Frame frame) {
        return frame.workshop().isBlank()
                && desk.ledger().products().products().isEmpty()
                && desk.ledger().lots().all().isEmpty();
    }

    private void place(BatchRow row, List<Row> due, List<Row> resting, List<Row> atWork, List<Row> filled) {
        boolean over = row.due().filter(moment -> !moment.isAfter(now)).isPresent();
        if (row.stage() == BatchStage.RESTING || row.due().isPresent()) {
            (over ? due : resting).add(row(row, "/bench?do=look"));
        } else if (row.stage() == BatchStage.FILLED) {
            filled.add(row(row, "/fill"));
        } else {
            atWork.add(row(row, row.stage() == BatchStage.PLANNED ? "" : "/bench"));
        }
    }

    private Row row(BatchRow row, String page) {
        String when = row.due()
                .map(moment -> "due " + Format.moment(moment, desk.zone()))
                .or(() -> row.lastAt().map(at -> "last entry " + Format.moment(at, desk.zone())))
                .orElse("");
        return new Row(
                row.batch().id(),
                row.batch().code(),
                row.productName(),
                row.stage().words(),
                Format.style(row.stage()),
                when,
                "/batches/" + row.batch().id() + page);
    }

    private List<PaperRow> papers() {
        return PaperBook.of(desk.ledger()).dueBy(today.plusDays(SOON_DAYS)).stream()
                .limit(MOST)
                .map(filed -> new PaperRow(
                        filed.paper().title(),
                        filed.paper().kind().words(),
                        filed.paper().reviewBy().map(Format::day).orElse(""),
                        filed.path()))
                .toList();
    }

    private List<LotRow> expiring() {
        MaterialBook book = desk.ledger().materials().book();
        LocalDate soon = today.plusDays(SOON_DAYS);
        return desk.ledger().lots().all().stream()
                .filter(stocked -> stocked.lot().state() != Lot.State.USED_UP)
                .filter(stocked -> stocked.onHand().signum() > 0)
                .filter(stocked -> stocked.lot()
                        .expires()
                        .filter(day -> !day.isAfter(soon))
                        .isPresent())
                .limit(MOST)
                .map(stocked -> lotRow(book, stocked))
                .toList();
    }

    private LotRow lotRow(MaterialBook book, StockedLot stocked) {
        Lot lot = stocked.lot();
        Optional<Material> card = book.material(lot.materialKey());
        return new LotRow(
                lot.code(),
                card.map(Material::name).orElse(lot.materialKey()),
                lot.expires().map(Format::day).orElse(""),
                Format.grams(stocked.onHand()),
                lot.expiredOn(today));
    }
}
