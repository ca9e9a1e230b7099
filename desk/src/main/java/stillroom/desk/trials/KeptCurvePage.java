package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;
import stillroom.formulary.trial.ViscosityCurve;
import stillroom.formulary.trial.ViscosityCurve.Series;
import stillroom.science.curve.Conditions.Geometry;
import stillroom.science.curve.FlowPoint;
import stillroom.science.curve.SaltPoint;

/**
 * A curve kept with its product.
 *
 * @param asked what is looked at
 * @param typed what was typed: the wish, or further readings
 * @param shown what follows from the series that are compared
 */
public record KeptCurvePage(
        Frame frame,
        ViscosityCurve curve,
        String productName,
        Asked asked,
        Typed typed,
        CurvePage.Shown shown,
        List<SeriesRow> series) {
    public KeptCurvePage {
        series = List.copyOf(series);
    }

    /**
     * Readings taken in one way.
     *
     * @param number from 1
     * @param leftOut in what they differ from those that are fitted; empty where they are fitted too
     */
    public record SeriesRow(int number, String conditions, String readings, String leftOut) {}

    /**
     * What is looked at.
     *
     * @param as number of the series with which others are compared, from 1
     * @param wanted viscosity, where one is
     */
    public record Asked(int as, Optional<Double> wanted) {
        public String shown() {
            return wanted.map(TrialPage::plain).orElse("");
        }
    }

    static KeptCurvePage of(Frame frame, ViscosityCurve curve, String productName, Asked asked, Typed typed) {
        int chosen = asked.as() >= 1 && asked.as() <= curve.series().size() ? asked.as() - 1 : 0;
        return new KeptCurvePage(
                frame, curve, productName, asked, typed, shown(curve, chosen, asked.wanted()), rows(curve, chosen));
    }

    private static CurvePage.Shown shown(ViscosityCurve curve, int chosen, Optional<Double> wanted) {
        List<ViscosityCurve.Reading> readings = curve.comparableWith(chosen).stream()
                .flatMap(one -> one.readings().stream())
                .toList();
        return switch (curve.against()) {
            case DOSE ->
                SaltWork.shown(
                        readings.stream()
                                .map(one -> new SaltPoint(one.at(), one.viscosity()))
                                .toList(),
                        curve.brought(),
                        wanted,
                        SaltWork.unit(cup(curve)));
            case SHEAR_RATE ->
                FlowWork.shown(readings.stream()
                        .map(one -> new FlowPoint(one.at(), one.viscosity()))
                        .toList());
        };
    }

    private static List<SeriesRow> rows(ViscosityCurve curve, int chosen) {
        List<SeriesRow> rows = new ArrayList<>();
        for (Series one : curve.series()) {
            List<String> differs = curve.series().get(chosen).conditions().differences(one.conditions());
            rows.add(new SeriesRow(
                    rows.size() + 1,
                    ConditionsForm.words(one.conditions()),
                    one.readings().stream()
                            .map(reading -> TrialPage.plain(reading.at()) + ": " + TrialPage.plain(reading.viscosity()))
                            .collect(Collectors.joining("; ")),
                    String.join(", ", differs)));
        }
        return rows;
    }

    public boolean isDose() {
        return curve.against() == ViscosityCurve.Against.DOSE;
    }

    private static boolean cup(ViscosityCurve curve) {
        return curve.series().stream().allMatch(one -> one.conditions().geometry() == Geometry.FLOW_CUP);
    }

    /** What is read, with its unit. */
    public String up() {
        return !isDose() ? "Viscosity, Pa s" : cup(curve) ? "Flow time, s" : "Viscosity, mPa s";
    }

    public String unit() {
        return SaltWork.unit(cup(curve));
    }

    public String path() {
        return "/trials/curves/" + curve.key();
    }

    public List<Choice> geometries() {
        return CurvePage.geometryChoices();
    }
}
