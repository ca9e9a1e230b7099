package stillroom.ledger.export;

import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stillroom.formulary.trial.TrialSet;
import stillroom.formulary.trial.ViscosityCurve;

/** Trials run by run and response by response, and readings of viscosity curves, one figure a row. */
record TrialTables(Csv csv, List<TrialSet> sets, List<ViscosityCurve> curves) {
    void write() throws IOException {
        csv.table(
                "trial_mixtures",
                List.of("trials", "name", "run", "order", "day", "product", "line", "component", "percent"),
                table -> sets.forEach(
                        set -> set.runs().forEach(run -> mixture(set, run).forEach(table::writeRecord))));
        csv.table(
                "trial_settings",
                List.of("trials", "run", "variable", "setting"),
                table -> sets.forEach(
                        set -> set.runs().forEach(run -> settings(set, run).forEach(table::writeRecord))));
        csv.table(
                "trial_responses",
                List.of("trials", "run", "response", "unit", "measured", "scores", "note"),
                table -> sets.forEach(
                        set -> set.runs().forEach(run -> measured(set, run).forEach(table::writeRecord))));
        csv.table(
                "viscosity_readings",
                List.of(
                        "curve",
                        "name",
                        "product",
                        "against",
                        "at",
                        "viscosity",
                        "instrument",
                        "geometry",
                        "spindle",
                        "speed",
                        "container",
                        "celsius",
                        "age_hours"),
                table -> curves.forEach(curve -> curve.series()
                        .forEach(series -> series.readings()
                                .forEach(reading -> table.writeRecord(reading(curve, series, reading))))));
    }

    /** Planned; what was weighed stands with the batches. */
    private static List<List<String>> mixture(TrialSet set, TrialSet.Run run) {
        return IntStream.range(0, set.components().size())
                .mapToObj(i -> List.of(
                        set.key(),
                        Csv.safe(set.name()),
                        Integer.toString(run.version()),
                        Integer.toString(run.order()),
                        Integer.toString(run.block()),
                        Long.toString(set.product()),
                        set.components().get(i).lineId(),
                        Csv.safe(set.components().get(i).name()),
                        Csv.percent(run.fractions().get(i) * set.share() / 100)))
                .toList();
    }

    private static List<List<String>> settings(TrialSet set, TrialSet.Run run) {
        return IntStream.range(0, set.variables().size())
                .mapToObj(k -> List.of(
                        set.key(),
                        Integer.toString(run.version()),
                        Csv.safe(set.variables().get(k).name()),
                        Double.toString(run.settings().get(k))))
                .toList();
    }

    private static List<List<String>> measured(TrialSet set, TrialSet.Run run) {
        return set.responses().stream()
                .filter(response -> run.measured().containsKey(response.name()))
                .map(response -> List.of(
                        set.key(),
                        Integer.toString(run.version()),
                        Csv.safe(response.name()),
                        Csv.safe(response.unit()),
                        String.valueOf(run.measured().get(response.name())),
                        run.scores().getOrDefault(response.name(), List.of()).stream()
                                .map(String::valueOf)
                                .collect(Collectors.joining(" ")),
                        Csv.safe(run.note())))
                .toList();
    }

    private static List<String> reading(
            ViscosityCurve curve, ViscosityCurve.Series series, ViscosityCurve.Reading reading) {
        return List.of(
                curve.key(),
                Csv.safe(curve.name()),
                Long.toString(curve.product()),
                Csv.word(curve.against()),
                Double.toString(reading.at()),
                Double.toString(reading.viscosity()),
                Csv.safe(series.conditions().instrument()),
                Csv.word(series.conditions().geometry()),
                Csv.safe(series.conditions().spindle()),
                Csv.safe(series.conditions().speed()),
                Csv.safe(series.conditions().container()),
                Double.toString(series.conditions().celsius()),
                Double.toString(series.conditions().sampleAgeHours()));
    }
}
