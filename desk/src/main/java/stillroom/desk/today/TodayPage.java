package stillroom.desk.today;

import java.util.List;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/**
 * What the start page shows.
 *
 * @param first whether nothing is in the workshop yet, so that it says hello
 * @param due rests that are over: the next-day checks
 * @param resting rests that go on
 * @param atWork batches in work or planned
 * @param filled batches that wait for a decision
 * @param papers documents to be looked at again
 * @param expiring lots that expire within a month, or have expired, and are not used up
 */
public record TodayPage(
        Frame frame,
        boolean first,
        Typed typed,
        List<Row> due,
        List<Row> resting,
        List<Row> atWork,
        List<Row> filled,
        List<LotRow> expiring,
        List<PaperRow> papers,
        int moreUnfinished) {
    public TodayPage {
        due = List.copyOf(due);
        resting = List.copyOf(resting);
        atWork = List.copyOf(atWork);
        filled = List.copyOf(filled);
        expiring = List.copyOf(expiring);
        papers = List.copyOf(papers);
    }

    /** A batch. */
    public record Row(
            long id, String code, String product, String stage, String stageStyle, String when, String href) {}

    /** A lot. */
    public record LotRow(String code, String material, String expires, String onHand, boolean expired) {}

    /** A document. */
    public record PaperRow(String title, String kind, String by, String path) {}

    /** Nothing at all is to be done. */
    public boolean quiet() {
        return due.isEmpty()
                && resting.isEmpty()
                && atWork.isEmpty()
                && filled.isEmpty()
                && expiring.isEmpty()
                && papers.isEmpty();
    }
}
