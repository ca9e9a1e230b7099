package stillroom.desk.batches;

import java.time.Duration;
import java.util.List;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Judgement;
import stillroom.formulary.batch.AsMade;
import stillroom.formulary.batch.BatchEvent.ReadingTaken;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.dosing.DriftCause;
import stillroom.formulary.dosing.PhTrend;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.meter.MeterMarks;
import stillroom.science.meter.Drift;

/** Whether the pH of a batch moves over the days, and what could be behind it. */
public final class PhTrends {
    private static final double SLOW_PER_DAY = 0.02;

    private PhTrends() {}

    /**
     * One way of reading.
     *
     * @param says slope, interval and verdict, one sentence
     * @param causes what is present and known for moving a pH this way; empty for noise
     */
    public record TrendRow(String way, String says, List<String> causes) {
        public TrendRow {
            causes = List.copyOf(causes);
        }
    }

    /** The meters of the workshop, to mark readings by. */
    public static MeterMarks meters(BatchWork work) {
        return new MeterMarks(
                work.desk().ledger().meters().meters(),
                work.desk().ledger().meters().calibrations(),
                work.desk().zone());
    }

    static List<TrendRow> of(BatchWork work) {
        String electrode = work.state().readings(ReadingKind.PH).stream()
                .map(Logged::event)
                .map(ReadingTaken::how)
                .map(how -> how.getOrDefault("electrode", ""))
                .reduce("", (earlier, later) -> later);
        return PhTrend.of(work.log(), meters(work).repeatability(electrode)).stream()
                .map(trend -> trend.tooEarly() ? early(work, trend) : row(work, trend))
                .toList();
    }

    private static TrendRow early(BatchWork work, PhTrend trend) {
        return new TrendRow(
                trend.way(),
                "Too early to tell whether it moves: " + trend.readings() + " readings over " + span(trend)
                        + " since the last addition. A verdict takes " + PhTrend.FEWEST_READINGS + " readings over "
                        + PhTrend.SHORTEST.toHours() + " hours or more: read again from "
                        + Format.moment(trend.tellableFrom(), work.desk().zone()) + " on.",
                List.of());
    }

    private static TrendRow row(BatchWork work, PhTrend trend) {
        Drift drift = trend.drift();
        boolean drifts = drift.verdict() == Drift.Verdict.DRIFT;
        String says = slope(drift) + ", " + trend.readings() + " readings over " + span(trend)
                + " since the last addition. "
                + (drifts
                        ? "That is a drift: more than the repeatability of " + trend.repeatability() + " pH explains."
                        : "That is noise: not to be told from the repeatability of " + trend.repeatability() + " pH.");
        return new TrendRow(trend.way(), says, drifts ? causes(work, drift.perDay() < 0) : List.of());
    }

    /** A slow slope is said by the week, so that two decimals say something. */
    private static String slope(Drift drift) {
        boolean slow = Math.abs(drift.perDay()) < SLOW_PER_DAY;
        int days = slow ? 7 : 1;
        return (drift.perDay() < 0 ? "Falls by " : "Climbs by ")
                + Format.figure(Math.abs(days * drift.perDay()), 2) + " pH a " + (slow ? "week" : "day")
                + " (95 % interval " + Format.range(days * drift.lowPerDay(), days * drift.highPerDay(), 2) + ")";
    }

    private static String span(PhTrend trend) {
        Duration span = Duration.between(trend.first(), trend.last());
        if (span.toMinutes() < 1) {
            return "less than a minute";
        }
        if (span.toMinutes() < 120) {
            return span.toMinutes() + (span.toMinutes() == 1 ? " minute" : " minutes");
        }
        return span.toHours() < 48 ? span.toHours() + " hours" : Format.figure(trend.days(), 1) + " days";
    }

    private static List<String> causes(BatchWork work, boolean falls) {
        AsMade made = AsMade.of(work.state(), work.formula(), work.book());
        return DriftCause.of(Judgement.of(
                                work.desk(),
                                made.subject(work.product().brief(), work.formula(), work.state()),
                                work.book())
                        .composition()
                        .shares())
                .stream()
                .filter(cause -> cause.falls() == falls)
                .map(cause -> cause.name() + ": " + cause.says())
                .toList();
    }
}
