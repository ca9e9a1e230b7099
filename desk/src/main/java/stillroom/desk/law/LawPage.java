package stillroom.desk.law;

import java.time.LocalDate;
import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/**
 * The law as recorded, for one market on one day.
 *
 * @param typed market and day as asked
 * @param notCovered what the record leaves out
 * @param turnings the coming days on which rows turn, over all markets
 * @param running whether every formula is being judged right now
 */
public record LawPage(
        Frame frame,
        Typed typed,
        List<Choice> markets,
        String market,
        String marketWords,
        LocalDate day,
        String dayWords,
        String recordedOn,
        List<TableRow> tables,
        String notCovered,
        List<Turning> turnings,
        List<Choice> which,
        boolean running) {
    public LawPage {
        markets = List.copyOf(markets);
        tables = List.copyOf(tables);
        turnings = List.copyOf(turnings);
        which = List.copyOf(which);
    }

    /**
     * One table.
     *
     * @param counting rows in force on the day
     * @param read of these, read in the legal text
     * @param coming rows that begin after the day
     */
    public record TableRow(
            String table,
            String words,
            int rows,
            int counting,
            int read,
            int unread,
            int coming,
            String sources,
            String readOn) {}

    /** A day on which rows turn. */
    public record Turning(LocalDate day, String words, String says) {}
}
