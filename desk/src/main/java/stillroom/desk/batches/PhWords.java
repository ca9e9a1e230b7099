package stillroom.desk.batches;

import java.util.Optional;
import stillroom.desk.shell.Format;
import stillroom.formulary.batch.PhStanding;
import stillroom.formulary.quantity.Interval;

/** Says how the pH as last read stands to what the product is meant to have. */
public final class PhWords {
    private PhWords() {}

    /** Such as "pH 6.1 is above 5.6", for a reading outside its band. */
    public static String outside(PhStanding standing) {
        double end = standing.above() ? standing.band().high() : standing.band().low();
        return "pH " + LogWords.plain(standing.value()) + " is " + (standing.above() ? "above" : "below") + " "
                + LogWords.plain(end);
    }

    /** The last pH, the band and the aim; empty where the product has no band. */
    public static String standing(BatchWork work) {
        return work.product().brief().phBand().map(band -> standing(work, band)).orElse("");
    }

    private static String standing(BatchWork work, Interval band) {
        String last = PhStanding.last(work.state(), band)
                .map(standing -> "Last pH " + LogWords.plain(standing.value()) + ", read "
                        + Format.moment(standing.reading().at(), work.desk().zone()))
                .orElse("The pH was not read yet");
        return last + ". " + wanted(work, band);
    }

    /** Band and aim, one sentence. */
    public static String wanted(BatchWork work, Interval band) {
        Optional<Double> aim = work.product().brief().phTarget();
        return "The band is " + LogWords.plain(band.low()) + " to " + LogWords.plain(band.high())
                + aim.map(pH -> ", the aim " + LogWords.plain(pH)).orElse("") + ".";
    }
}
