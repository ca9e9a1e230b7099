package stillroom.desk.batches.bench;

import io.javalin.http.NotFoundResponse;
import java.util.List;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.LogWords;
import stillroom.desk.batches.bench.BenchPage.Way;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.LogEntry;

/** What may be done about something that went in by mistake. */
record Astray(BatchWork work, String vessel) {
    Panel panel(String number) {
        LogEntry entry = work.log().stream()
                .filter(one -> Integer.toString(one.number()).equals(number))
                .filter(one -> one.event() instanceof BatchEvent.Poured)
                .findFirst()
                .orElseThrow(() -> new NotFoundResponse("The log has no such weighing."));
        BatchEvent.Poured pour = (BatchEvent.Poured) entry.event();
        String bench = work.path() + "/bench";
        return new Panel.Done(
                work.cards().name(pour.materialKey()) + " is in by mistake",
                new LogWords(work).say(pour)
                        + " Still on top and not stirred in: lift it off and weigh it back, to waste. Otherwise see what the product is now, and decide.",
                List.of(
                        new Way(
                                "Take it back",
                                bench + Wish.query(vessel, Doing.BACK, "material", pour.materialKey()),
                                false),
                        new Way("See what it is now", work.path() + "/as-made", false),
                        new Way("Keep it and go on", bench + "?vessel=" + Wish.coded(vessel), false),
                        new Way("Give the batch up", bench + Wish.query(vessel, Doing.GIVEUP), false),
                        new Way(
                                "It was not poured: strike the entry",
                                bench + Wish.query(vessel, Doing.STRIKE, "entry", number),
                                false)));
    }
}
