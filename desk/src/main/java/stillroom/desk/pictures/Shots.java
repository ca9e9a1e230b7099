package stillroom.desk.pictures;

import java.util.List;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.pictures.PicturesPage.Shot;
import stillroom.desk.shell.Format;
import stillroom.formulary.batch.BatchEvent.Pictured;
import stillroom.formulary.batch.LogEntry;

/** The photographs in a batch's log. */
public final class Shots {
    private Shots() {}

    public static List<Shot> of(BatchWork work) {
        return work.log().stream()
                .filter(entry -> entry.event() instanceof Pictured)
                .map(entry -> shot(work, entry, (Pictured) entry.event()))
                .toList();
    }

    private static Shot shot(BatchWork work, LogEntry entry, Pictured picture) {
        return new Shot(
                entry.number(),
                picture.attachment(),
                work.path() + "/pictures/" + picture.attachment() + ".jpg",
                picture.when(),
                picture.words(),
                Format.moment(entry.at(), work.desk().zone()),
                entry.by(),
                work.state().struck().contains(entry.number()));
    }
}
