package stillroom.desk.trials;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.formulary.trial.TrialSet;

/** What was studied on a product: its sets of trials and its curves of viscosity. */
public final class Studies {
    private Studies() {}

    /**
     * @param about how far it is, in words
     */
    public record Study(String path, String name, String about) {}

    /** Sets that vary a version of it, or whose runs it holds; then its curves. */
    public static List<Study> of(Desk desk, long product) {
        List<Study> studies = new ArrayList<>();
        for (TrialSet set : new TrialBook(desk).all()) {
            if (set.base().product() == product || set.product() == product) {
                long measured = set.runs().stream()
                        .filter(run -> !run.measured().isEmpty())
                        .count();
                studies.add(new Study(
                        "/trials/" + set.key(),
                        set.name(),
                        "trials, " + measured + " of " + set.runs().size() + " runs measured"));
            }
        }
        new KeptCurves(desk)
                .all().stream()
                        .filter(curve -> curve.product() == product)
                        .forEach(curve -> studies.add(new Study(
                                "/trials/curves/" + curve.key(), curve.name(), CurvePage.kind(curve.against()))));
        return studies;
    }

    /** The run that a version of a product is, and where it stands among the others. */
    public static Optional<Study> run(Desk desk, long product, int version) {
        return new TrialBook(desk)
                .all().stream()
                        .filter(set -> set.product() == product)
                        .flatMap(set -> set.runs().stream()
                                .filter(run -> run.version() == version)
                                .map(run -> new Study(
                                        "/trials/" + set.key() + "#run-" + run.order(),
                                        set.name() + ", run " + run.order(),
                                        "")))
                        .findFirst();
    }

    /** Names of all runs, by product, full stop, version. */
    public static Map<String, String> runNames(Desk desk) {
        Map<String, String> names = new HashMap<>();
        for (TrialSet set : new TrialBook(desk).all()) {
            set.runs()
                    .forEach(
                            run -> names.put(set.product() + "." + run.version(), set.name() + ", run " + run.order()));
        }
        return names;
    }
}
