package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;
import stillroom.formulary.trial.TrialSet;

/**
 * One set of trials: its runs in the order in which to make them.
 *
 * @param planSize grams proposed for one beaker
 * @param mark of what is stored now
 * @param stale what is stored otherwise than typed, where the form came too late; empty otherwise
 */
public record TrialPage(
        Frame frame, TrialSet set, List<Row> rows, Typed typed, String planSize, String mark, List<String> stale) {
    public TrialPage {
        stale = List.copyOf(stale);
        rows = List.copyOf(rows);
    }

    /**
     * @param percents of the formula, one per component, as weighed where it was
     * @param batchCode empty before it was planned
     * @param responses fields with what was measured
     */
    public record Row(
            int order,
            int version,
            int block,
            List<String> percents,
            boolean asWeighed,
            long batchId,
            String batchCode,
            String stage,
            List<Field> settings,
            List<Field> responses,
            String note) {}

    public record Field(String name, String label, String value) {}

    static TrialPage of(Frame frame, TrialSet set, List<Weighed> weighed, Typed typed, List<String> stale) {
        List<Row> rows = weighed.stream()
                .sorted(Comparator.comparingInt(one -> one.run().order()))
                .map(one -> row(set, one))
                .toList();
        return new TrialPage(frame, set, rows, typed, "100", TrialBook.mark(set), stale);
    }

    private static Row row(TrialSet set, Weighed one) {
        TrialSet.Run run = one.run();
        List<Field> responses = new ArrayList<>();
        for (int k = 0; k < set.responses().size(); k++) {
            TrialSet.Response response = set.responses().get(k);
            Double value = run.measured().get(response.name());
            responses.add(new Field(
                    "m" + run.version() + "-" + k,
                    response.name() + ", run " + run.order(),
                    value == null ? "" : plain(value)));
        }
        List<Field> settings = new ArrayList<>();
        for (int k = 0; k < set.variables().size(); k++) {
            settings.add(new Field(
                    "s" + run.version() + "-" + k,
                    set.variables().get(k).name() + ", run " + run.order(),
                    plain(run.settings().get(k))));
        }
        return new Row(
                run.order(),
                run.version(),
                run.block(),
                one.fractions().stream()
                        .map(x -> Format.figure(x * set.share(), 2))
                        .toList(),
                one.asWeighed(),
                one.batch().map(row -> row.batch().id()).orElse(0L),
                one.batch().map(row -> row.batch().code()).orElse(""),
                one.batch().map(row -> row.stage().words()).orElse(""),
                settings,
                responses,
                run.note());
    }

    static String plain(double value) {
        return new java.math.BigDecimal(Double.toString(value))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** The version that the trials vary, beside the first runs. */
    public String sideBySide() {
        StringBuilder address = new StringBuilder(
                "/side-by-side?of=" + set.base().product() + "." + set.base().version());
        rows.stream()
                .limit(3)
                .forEach(row ->
                        address.append("&of=").append(set.product()).append('.').append(row.version()));
        return address.toString();
    }

    public boolean severalDays() {
        return rows.stream().anyMatch(row -> row.block() > 1);
    }

    public boolean anythingMeasured() {
        return set.runs().stream().anyMatch(run -> !run.measured().isEmpty());
    }
}
