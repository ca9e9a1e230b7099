package stillroom.desk.batches;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import stillroom.formulary.batch.BatchEvent.ReadingTaken;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.quantity.Interval;

/**
 * pH over time. Neat readings and each dilution are curves of their own: they are not to be compared.
 *
 * @param times of all readings [s since 1970], comma-separated
 * @param curves one per way of reading
 * @param band the product's band, where it has one
 */
public record PhChart(String times, List<Curve> curves, Optional<Interval> band) {
    public PhChart {
        curves = List.copyOf(curves);
    }

    /** Values at the times of the chart, comma-separated, empty where this way was not used. */
    public record Curve(String name, String values) {}

    static Optional<PhChart> of(BatchWork work) {
        List<Logged<ReadingTaken>> read = work.state().readings(ReadingKind.PH).stream()
                .filter(reading -> reading.event().value().isPresent())
                .toList();
        if (read.isEmpty()) {
            return Optional.empty();
        }
        Map<String, List<Logged<ReadingTaken>>> ways =
                read.stream().collect(Collectors.groupingBy(PhChart::way, TreeMap::new, Collectors.toList()));
        String times = read.stream()
                .map(reading -> Long.toString(reading.at().getEpochSecond()))
                .collect(Collectors.joining(","));
        List<Curve> curves = ways.keySet().stream().map(way -> curve(way, read)).toList();
        return Optional.of(new PhChart(times, curves, work.product().brief().phBand()));
    }

    private static String way(Logged<ReadingTaken> reading) {
        return reading.event().how().getOrDefault("measured", "neat");
    }

    private static Curve curve(String way, List<Logged<ReadingTaken>> read) {
        return new Curve(
                way,
                read.stream()
                        .map(reading -> way(reading).equals(way)
                                ? String.format(
                                        Locale.ROOT,
                                        "%s",
                                        reading.event().value().orElseThrow())
                                : "")
                        .collect(Collectors.joining(",")));
    }
}
