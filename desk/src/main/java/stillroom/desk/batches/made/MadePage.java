package stillroom.desk.batches.made;

import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchHead;
import stillroom.desk.shell.Frame;

/**
 * What was really made beside what was planned.
 *
 * @param lines planned lines and, after them, what no line asked for
 * @param lotWords for which materials the certificate of the lot counts, one sentence each
 * @param judged the same judgement that the formula gets; none while nothing is in
 */
public record MadePage(
        Frame frame,
        BatchHead head,
        List<LineMade> lines,
        Went masses,
        List<String> corrections,
        List<String> samples,
        List<LotMade> lots,
        List<String> lotWords,
        String evaporation,
        Optional<Judged> judged,
        int decimals) {
    public MadePage {
        lines = List.copyOf(lines);
        corrections = List.copyOf(corrections);
        samples = List.copyOf(samples);
        lots = List.copyOf(lots);
        lotWords = List.copyOf(lotWords);
    }

    /**
     * One line.
     *
     * @param expected whether what is planned was only expected, because it is added up to a reading
     * @param state "within", "off", "explained", "not weighed", "up to the reading" or "beyond the plan"
     * @param because the explanation, where the line was accepted as it is
     */
    public record LineMade(
            String name,
            String planned,
            String poured,
            String deviation,
            String deviationPercent,
            String asked,
            String made,
            boolean expected,
            String state,
            String because) {}

    /** Where the mass went, all [g]. */
    public record Went(
            String added, String evaporated, String samples, String filled, String retained, String inVessels) {}

    public record LotMade(String material, String lot, String added, String inProduct) {}
}
