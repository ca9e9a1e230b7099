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
 * @param readings how many
 * @param days from the first to the last
 * @param drift slope with its interval and what it means
 * @param repeatability of the instrument [pH]
 */
public record PhTrend(String way, int readings, double days, Drift drift, double repeatability) {
    /** Standard deviation of a strip. Common practice, no source. */
    private static final double STRIP = 0.4;

    /**
     * One trend for each way of reading with two readings or more.
     *
     * @param meter repeatability of the meter [pH]
     */
    public static List<PhTrend> of(List<LogEntry> log, double meter) {
        BatchState state = BatchState.of(log);
        Instant settled = log.stream()
                .filter(entry -> !state.struck().contains(entry.number()) && pours(entry.event()))
                .map(LogEntry::at)
                .reduce(Instant.MIN, (earlier, later) -> later);
        Map<String, List<Logged<ReadingTaken>>> ways = new LinkedHashMap<>();
        for (Logged<ReadingTaken> reading : state.readings(ReadingKind.PH)) {
            if (reading.event().value().isPresent() && !reading.at().isBefore(settled)) {
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
                        Duration.between(first, reading.at()).toMillis() / 86_400_000.0,
                        reading.event().value().orElseThrow()))
                .toList();
        boolean strips = read.stream().anyMatch(reading -> mentions(reading.event(), "strip"));
        double repeatability = strips ? STRIP : meter;
        return new PhTrend(
                way, read.size(), days.get(days.size() - 1).day(), Drift.of(days, repeatability), repeatability);
    }

    private static String way(ReadingTaken reading) {
        return reading.how().getOrDefault("measured", "neat");
    }

    private static boolean mentions(ReadingTaken reading, String word) {
        return reading.how().values().stream()
                .anyMatch(value -> value.toLowerCase(Locale.ROOT).contains(word));
    }
}
