package stillroom.desk.workshop;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import java.util.zip.CRC32;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Markets;
import stillroom.desk.shell.Typed;
import stillroom.formulary.plan.Balance;
import stillroom.ledger.backup.Backup;
import stillroom.ledger.backup.Backups;
import stillroom.ledger.workshop.Workshop;

/** Builds the workshop's own page. */
record WorkshopView(Desk desk) {
    private static final int COPIES_SHOWN = 24;

    WorkshopPage page(Context request, Typed typed, Typed begin, String conflict) {
        Backups backups = new Backups(desk.workspace().folder());
        return new WorkshopPage(
                desk.frame(request, "Workshop", Section.WORKSHOP),
                typed,
                mark(desk.ledger().settings().read()),
                conflict,
                Markets.choices(),
                balances(desk.ledger().equipment().balances()),
                begin,
                desk.workspace().folder().resolve("stillroom.db").toString(),
                backups.folder().toString(),
                backups.all().stream().limit(COPIES_SHOWN).map(this::copy).toList());
    }

    private WorkshopPage.Copy copy(Backup backup) {
        return new WorkshopPage.Copy(
                backup.name(),
                Format.moment(backup.at().atZone(desk.zone()).toInstant(), desk.zone()),
                backup.automatic() ? "by itself" : "by hand",
                Format.figure(backup.bytes() / 1e6, 1) + " MB");
    }

    private static List<WorkshopPage.BalanceRow> balances(List<Balance> balances) {
        return IntStream.range(0, balances.size())
                .mapToObj(i -> row(i + 1, balances.get(i)))
                .toList();
    }

    private static WorkshopPage.BalanceRow row(int position, Balance balance) {
        return new WorkshopPage.BalanceRow(
                position,
                balance.name(),
                Format.grams(balance.step()) + " g",
                Format.grams(balance.maximum()) + " g",
                balance.repeatability().map(s -> Format.grams(s) + " g").orElse("not measured"));
    }

    /** A mark of what the settings looked like, so that a stale edit is noticed. */
    static String mark(Workshop workshop) {
        CRC32 sum = new CRC32();
        sum.update(workshop.toString().getBytes(StandardCharsets.UTF_8));
        return Long.toHexString(sum.getValue());
    }
}
