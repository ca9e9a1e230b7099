package stillroom.desk.batches.bench;

import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchHead;
import stillroom.desk.batches.LogLine;
import stillroom.desk.batches.Who;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/**
 * The bench screen: all vessels in a strip, one action large, what else may be done, and the newest entries.
 *
 * @param looseTimers timers whose vessel is not in use
 * @param vessel the vessel before one; empty while there is none
 * @param form what every form sends along
 * @param typed what was typed into the form that could not be taken
 * @param general problems that belong to no field on the screen
 * @param later what comes after this in the same vessel
 * @param lastTime what happened here in the last five batches, one sentence each
 * @param ways other things that may be done now
 */
public record BenchPage(
        Frame frame,
        BatchHead head,
        List<VesselCard> vessels,
        List<VesselTimer> looseTimers,
        String vessel,
        Panel panel,
        ActForm form,
        Typed typed,
        List<String> general,
        List<Way> later,
        List<Way> ways,
        List<LogLine> newest,
        List<String> lastTime) {
    public BenchPage {
        lastTime = List.copyOf(lastTime);
        vessels = List.copyOf(vessels);
        looseTimers = List.copyOf(looseTimers);
        general = List.copyOf(general);
        later = List.copyOf(later);
        ways = List.copyOf(ways);
        newest = List.copyOf(newest);
    }

    /**
     * What every form sends along.
     *
     * @param requestId names this one act, so that it is written once however often it is sent
     * @param seen number of the newest entry that this page shows
     * @param about hidden fields that say what the form is about
     */
    public record ActForm(String path, String requestId, int seen, Who who, List<Hidden> about) {
        public ActForm {
            about = List.copyOf(about);
        }
    }

    public record Hidden(String name, String value) {}

    /** One way on: words and the address. */
    public record Way(String words, String href, boolean current) {}

    /**
     * One vessel of the strip.
     *
     * @param room how full it is, empty where its capacity is not known
     * @param crowded whether it does not hold what is to go in
     * @param next what comes next in it
     */
    public record VesselCard(
            String name,
            String holds,
            String mass,
            String celsius,
            String room,
            boolean crowded,
            List<VesselTimer> timers,
            String next,
            String href,
            boolean current) {
        public VesselCard {
            timers = List.copyOf(timers);
        }
    }

    public record VesselTimer(String timer, String label, String until, String clock, String vessel) {}

    /** The vessel before one, for an address. */
    public String vesselCoded() {
        return Wish.coded(vessel);
    }

    /** The vessel before one as a card, where there is one. */
    public Optional<VesselCard> card() {
        return vessels.stream().filter(VesselCard::current).findFirst();
    }
}
