package stillroom.formulary.dosing;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchEvent.ReadingTaken;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.formula.ReadingKind;
import stillroom.science.meter.Drift;
import stillroom.science.meter.Drift.DayReading;

/**
 * How the pH of a batch moves over the days since anything was last poured in, for one way of reading.
 *
 * @param way such as "neat" or "10 % in water"; ways are never compared
 * @param readings how many since the last addition
 * @param first when the first of them was taken
 * @param last when the last was
 * @param drift slope with its interval and what it means, once it is not {@link #tooEarly()}
 * @param repeatability of the instrument [pH]
 */
public record PhTrend(String way, int readings, Instant first, Instant last, Drift drift, double repeatability) {
    /** Standard deviation of a strip. Common practice, no source. */
    private static final double STRIP = 0.4;

    /** Two readings always lie on a line. Common practice, no source. */
    public static final int FEWEST_READINGS = 3;

    /** Mixing, cooling and the electrode move a reading within the first day. Common practice, no source. */
    public static final Duration SHORTEST = Duration.ofHours(20);

    private static final double MILLIS_A_DAY = 86_400_000;

    /** From the first reading to the last [days]. */
    public double days() {
        return days(first, last);
    }

    /** Whether the readings are too few or too close together for any slope to mean something. */
    public boolean tooEarly() {
        return readings < FEWEST_READINGS
                || Duration.between(first, last).compareTo(SHORTEST) < 0
                || drift.verdict() == Drift.Verdict.TOO_FEW_READINGS;
    }

    /** From when on a further reading is far enough from the first. */
    public Instant tellableFrom() {
        return first.plus(SHORTEST);
    }

    /**
     * One trend for each way of reading with two readings or more.
     *
     * @param meter repeatability of the meter [pH]
     */
    public static List<PhTrend> of(List<LogEntry> log, double meter) {
        BatchState state = BatchState.of(log);
        int settled = log.stream()
                .filter(entry -> !state.struck().contains(entry.number()) && pours(entry.event()))
                .mapToInt(LogEntry::number)
                .max()
                .orElse(0);
        Map<String, List<Logged<ReadingTaken>>> ways = new LinkedHashMap<>();
        for (Logged<ReadingTaken> reading : state.readings(ReadingKind.PH)) {
            if (reading.event().value().isPresent() && reading.number() > settled) {
                ways.computeIfAbsent(way(reading.event()), key -> new ArrayList<>())
                        .add(reading);
            }
        }
        List<PhTrend> trends = new ArrayList<>();
        ways.forEach((way, read) -> {
            if (read.size() > 1) {
                trends.add(trend(way, read, meter));
            }
        });
        return List.copyOf(trends);
    }

    private static boolean pours(BatchEvent event) {
        return event instanceof BatchEvent.Poured
                || event instanceof BatchEvent.Combined
                || event instanceof BatchEvent.BulkReceived;
    }

    private static PhTrend trend(String way, List<Logged<ReadingTaken>> read, double meter) {
        Instant first = read.get(0).at();
        List<DayReading> days = read.stream()
                .map(reading -> new DayReading(
                        days(first, reading.at()), reading.event().value().orElseThrow()))
                .toList();
        boolean strips = read.stream().anyMatch(reading -> mentions(reading.event(), "strip"));
        double repeatability = strips ? STRIP : meter;
        Instant last = read.get(read.size() - 1).at();
        return new PhTrend(way, read.size(), first, last, Drift.of(days, repeatability), repeatability);
    }

    private static double days(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / MILLIS_A_DAY;
    }

    private static String way(ReadingTaken reading) {
        return reading.how().getOrDefault("measured", "neat");
    }

    private static boolean mentions(ReadingTaken reading, String word) {
        return reading.how().values().stream()
                .anyMatch(value -> value.toLowerCase(Locale.ROOT).contains(word));
    }
}
