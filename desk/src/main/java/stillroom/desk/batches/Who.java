package stillroom.desk.batches;

import java.util.List;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.LogEntry;
import stillroom.ledger.Ledger;
import stillroom.ledger.batch.BatchQuery;

/**
 * Who works at the bench, remembered from the log and nowhere else.
 *
 * @param pours who did the last entry
 * @param checks who checked the last weighing that was checked
 */
public record Who(String pours, String checks) {
    public static final Who NOBODY = new Who("", "");

    /** From the newest entries of a batch. */
    public static Who of(List<LogEntry> log) {
        String pours = log.isEmpty() ? "" : log.get(log.size() - 1).by();
        String checks = "";
        for (LogEntry entry : log) {
            if (entry.event() instanceof BatchEvent.Poured poured) {
                checks = poured.checkedBy();
            }
        }
        return new Who(pours, checks.equals(pours) ? "" : checks);
    }

    /** Who begins something at one press of a button: as typed, else who worked last, else the maker. */
    public static String begins(String typed, Ledger ledger) {
        String last = typed.isEmpty() ? ofNewest(ledger).pours() : typed;
        return last.isEmpty() ? "maker" : last;
    }

    /** From the newest batch of the workshop. */
    public static Who ofNewest(Ledger ledger) {
        return ledger.batches().page(BatchQuery.ALL, 0, 1).rows().stream()
                .findFirst()
                .map(row -> of(ledger.batches().log(row.batch().id())))
                .orElse(NOBODY);
    }
}
