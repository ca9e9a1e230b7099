package stillroom.desk.batches.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.LogWords;
import stillroom.desk.batches.PhWords;
import stillroom.desk.batches.bench.BenchPage.Way;
import stillroom.desk.shell.Format;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.batch.BatchEvent.ReadingTaken;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.batch.NextAction;
import stillroom.formulary.batch.PhStanding;
import stillroom.formulary.plan.PlannedLine;

/** What to do about a pH outside its band. */
final class OutsidePh {
    private final BatchWork work;
    private final String vessel;

    OutsidePh(BatchWork work, String vessel) {
        this.work = work;
        this.vessel = vessel;
    }

    Panel.Outside panel(NextAction.Correct action) {
        PhStanding standing = action.standing();
        Purpose wanted = standing.above() ? Purpose.CORRECTION_ACID : Purpose.CORRECTION_BASE;
        List<Way> ways = new ArrayList<>();
        Optional<PlannedLine> serving = action.line().filter(line -> Purposes.of(work, line) == wanted);
        serving.ifPresent(line -> ways.add(way(
                "Add " + work.cards().name(line.materialKey()),
                Wish.query(vessel, Doing.WEIGH, "line", line.lineId()))));
        if (serving.isEmpty()) {
            ways.add(way(
                    standing.above() ? "Correct with an acid" : "Correct with a base",
                    Wish.query(vessel, Doing.CORRECT, "purpose", wanted.name())));
        }
        ways.add(new Way("Work out the dose", work.path() + "/ph?vessel=" + Wish.coded(vessel), false));
        ways.add(way("Read the pH again", Wish.query(vessel, Doing.READ, "kind", "PH")));
        return new Panel.Outside(
                PhWords.outside(standing),
                says(standing),
                ways,
                action.line().map(PlannedLine::lineId).orElse(""));
    }

    private Way way(String words, String query) {
        return new Way(words, work.path() + "/bench" + query, false);
    }

    private String says(PhStanding standing) {
        Logged<ReadingTaken> reading = standing.reading();
        String how = LogWords.how(reading.event().how());
        return "Read " + Format.moment(reading.at(), work.desk().zone()) + (how.isEmpty() ? "" : " (" + how + ")")
                + ". " + PhWords.wanted(work, standing.band())
                + " Correct in parts: add, stir, read, and add again.";
    }
}
