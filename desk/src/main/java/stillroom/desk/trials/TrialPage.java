package stillroom.desk.trials;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;
import stillroom.formulary.trial.TrialSet;

/**
 * One set of trials: its runs in the order in which to make them.
 *
 * @param planSize grams proposed for the first beaker
 * @param mark of what is stored now
 * @param stale what is stored otherwise than typed, where the form came too late; empty otherwise
 */
public record TrialPage(
        Frame frame, TrialSet set, List<Row> rows, Typed typed, String planSize, String mark, List<String> stale) {
    private static final MathContext TWELVE_DIGITS = new MathContext(12);

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

    /**
     * @param head of its column
     * @param hint beside it, such as what the scores of a panel come to
     */
    public record Field(String name, String label, String head, String value, String hint, boolean panel) {}

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
            responses.add(new Field(
                    "m" + run.version() + "-" + k,
                    response.name() + ", run " + run.order(),
                    head(response),
                    shown(run, response),
                    Scores.words(run.scores().getOrDefault(response.name(), List.of())),
                    response.panel()));
        }
        List<Field> settings = new ArrayList<>();
        for (int k = 0; k < set.variables().size(); k++) {
            settings.add(new Field(
                    "s" + run.version() + "-" + k,
                    set.variables().get(k).name() + ", run " + run.order(),
                    set.variables().get(k).name(),
                    plain(run.settings().get(k)),
                    "",
                    false));
        }
        return new Row(
                run.order(),
                run.version(),
                run.block(),
                one.fractions().stream()
                        .map(x -> Format.figure(Math.rint(x * set.share() * 1e6) / 1e6, 2))
                        .toList(),
                one.asWeighed(),
                one.batch().map(row -> row.batch().id()).orElse(0L),
                one.batch().map(row -> row.batch().code()).orElse(""),
                one.batch().map(row -> row.stage().words()).orElse(""),
                settings,
                responses,
                run.note());
    }

    /** Its name with its unit. */
    public static String head(TrialSet.Response response) {
        return response.unit().isEmpty() ? response.name() : response.name() + ", " + response.unit();
    }

    /** What is stored of a response, as it is typed; empty where not measured. */
    static String shown(TrialSet.Run run, TrialSet.Response response) {
        List<Double> scores = run.scores().getOrDefault(response.name(), List.of());
        Double value = run.measured().get(response.name());
        return !scores.isEmpty() ? Scores.typed(scores) : value == null ? "" : plain(value);
    }

    /** As it was typed: twelve digits, so that what reckoning leaves behind them does not show. */
    public static String plain(double value) {
        return new BigDecimal(value, TWELVE_DIGITS).stripTrailingZeros().toPlainString();
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

    /** The first run, in their order, that lacks a response: what to do next. */
    public Optional<Row> next() {
        return rows.stream()
                .filter(row ->
                        row.responses().stream().anyMatch(field -> field.value().isEmpty()))
                .findFirst();
    }

    /** The first run, in their order, that was not begun: beakers may be weighed out one after another, and read later. */
    public Optional<Row> unweighed() {
        return rows.stream()
                .filter(row -> row.batchCode().isEmpty()
                        && row.responses().stream()
                                .anyMatch(field -> field.value().isEmpty()))
                .findFirst();
    }

    /** A run's mixture in one line: what a maker reads before taking the beaker. */
    public String mixture(Row row) {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < set.components().size(); i++) {
            parts.add(set.components().get(i).name() + " " + row.percents().get(i) + " %");
        }
        row.settings().forEach(field -> parts.add(field.head() + " " + field.value()));
        return String.join(", ", parts);
    }

    /** The first beaker is proposed in the usual size; the plan itself then proposes the size of the last one. */
    public String planPath(Row row) {
        boolean first = rows.stream().allMatch(one -> one.batchCode().isEmpty());
        return "/products/" + set.product() + "/versions/" + row.version() + "/plan"
                + (first ? "?by=mass&mass=" + planSize : "");
    }

    public long weighedRuns() {
        return rows.stream().filter(Row::asWeighed).count();
    }

    /** Runs of which all responses are in. */
    public long measuredRuns() {
        return rows.stream()
                .filter(row -> row.responses().stream()
                        .noneMatch(field -> field.value().isEmpty()))
                .count();
    }

    /** Too many columns for a table even on a wide screen. */
    public boolean manyColumns() {
        return set.components().size()
                        + 2 * (set.variables().size() + set.responses().size())
                > 9;
    }

    /** The limits on sums with the names of the lines. */
    public List<String> limits() {
        Pictures pictures = new Pictures(set);
        return set.constraints().stream().map(pictures::named).toList();
    }

    public String how() {
        return Words.design(set);
    }

    public boolean severalDays() {
        return rows.stream().anyMatch(row -> row.block() > 1);
    }

    public boolean anythingMeasured() {
        return set.runs().stream().anyMatch(run -> !run.measured().isEmpty());
    }
}
