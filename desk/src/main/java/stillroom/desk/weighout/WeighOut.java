package stillroom.desk.weighout;

import java.util.List;

/**
 * A printed sheet of runs to be weighed out.
 *
 * @param mass of each beaker, in words
 * @param cautions for what is in them, once for all
 */
public record WeighOut(
        String name,
        String workshop,
        String printed,
        boolean demonstration,
        String mass,
        List<String> cautions,
        List<Beaker> beakers) {
    public WeighOut {
        cautions = List.copyOf(cautions);
        beakers = List.copyOf(beakers);
    }

    /**
     * One run.
     *
     * @param head which run, on which day
     * @param settings of the process, in words
     * @param lines in working order; empty where no plan goes
     * @param said what to think of before weighing, or why there is no plan
     * @param responses to be filled in
     */
    public record Beaker(String head, String settings, List<Line> lines, List<String> said, List<String> responses) {
        public Beaker {
            lines = List.copyOf(lines);
            said = List.copyOf(said);
            responses = List.copyOf(responses);
        }
    }

    /** What to weigh of one material; expected only where it goes up to a reading. */
    public record Line(String phase, String material, String lot, String target, String tolerance, boolean expected) {}
}
