package stillroom.science.trial;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Which trials a fit rests on. What differs from day to day is fitted as a shift of the whole day; a run that is alone on its
 * day would only tell that shift, so it is left out where other days have more, and can test the fit instead.
 *
 * @param runs places of those that are in the fit, from 0
 * @param alone places of those that were measured, but alone on their day
 * @param days of those in the fit, ascending
 */
public record Taken(List<Integer> runs, List<Integer> alone, List<Integer> days) {
    public Taken {
        runs = List.copyOf(runs);
        alone = List.copyOf(alone);
        days = List.copyOf(days);
    }

    static Taken of(List<TrialRun> all) {
        Map<Integer, List<Integer>> byDay = IntStream.range(0, all.size())
                .filter(i -> all.get(i).response().isPresent())
                .boxed()
                .collect(Collectors.groupingBy(i -> all.get(i).block(), TreeMap::new, Collectors.toList()));
        boolean several = byDay.values().stream().anyMatch(day -> day.size() > 1);
        return new Taken(
                places(byDay, several, false),
                places(byDay, several, true),
                byDay.entrySet().stream()
                        .filter(day -> !(several && day.getValue().size() == 1))
                        .map(Map.Entry::getKey)
                        .toList());
    }

    private static List<Integer> places(Map<Integer, List<Integer>> byDay, boolean several, boolean alone) {
        return byDay.values().stream()
                .filter(day -> (several && day.size() == 1) == alone)
                .flatMap(List::stream)
                .sorted()
                .toList();
    }

    /** The runs in the fit, their days counted on from 1. */
    List<TrialRun> from(List<TrialRun> all) {
        return runs.stream()
                .map(all::get)
                .map(run -> new TrialRun(run.fractions(), run.process(), run.response(), days.indexOf(run.block()) + 1))
                .toList();
    }
}
