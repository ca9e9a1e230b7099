package stillroom.desk.sidebyside;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import stillroom.desk.shell.Desk;
import stillroom.desk.trials.TrialBook;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.trial.TrialSet;

/** What was set and measured with a version that is a run of trials. */
final class Trialled {
    private Trialled() {}

    /** By name; empty where the version is no run. */
    static Map<String, String> of(Desk desk, FormulaVersion version) {
        Map<String, String> shown = new LinkedHashMap<>();
        new TrialBook(desk)
                .all().stream()
                        .filter(set -> set.product() == version.productId())
                        .forEach(set -> set.runs().stream()
                                .filter(run -> run.version() == version.number())
                                .forEach(run -> add(set, run, shown)));
        return shown;
    }

    private static void add(TrialSet set, TrialSet.Run run, Map<String, String> shown) {
        shown.put("Run", set.name() + ", run " + run.order());
        for (int k = 0; k < set.variables().size(); k++) {
            shown.put(set.variables().get(k).name(), plain(run.settings().get(k)));
        }
        for (TrialSet.Response response : set.responses()) {
            Double measured = run.measured().get(response.name());
            shown.put(
                    response.name(),
                    measured == null ? "not measured" : (plain(measured) + " " + response.unit()).strip());
        }
        if (!run.note().isEmpty()) {
            shown.put("Note", run.note());
        }
    }

    private static String plain(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }
}
