package stillroom.desk.trials;

import java.util.Arrays;
import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;
import stillroom.formulary.trial.TrialSet;

/**
 * The form of a new set of trials.
 *
 * @param rows lines of the formula
 */
public record NewTrialPage(Frame frame, long product, int version, String productName, Typed typed, List<Row> rows) {
    public NewTrialPage {
        rows = List.copyOf(rows);
    }

    /** A line that may vary; percent as it stands; letter by which limits name it. */
    public record Row(String id, String letter, String name, String percent, boolean chosen) {}

    static NewTrialPage of(Frame frame, Varied varied, Typed typed, List<String> chosen) {
        return new NewTrialPage(
                frame,
                varied.product().id(),
                varied.version().number(),
                varied.product().name(),
                typed,
                varied.lines().stream()
                        .map(line -> new Row(
                                line.id(),
                                Limits.letter(varied.lines().indexOf(line)),
                                varied.name(line),
                                Format.figure(varied.percent(line.id()), 2),
                                chosen.contains(line.id())))
                        .toList());
    }

    public List<Choice> models() {
        return Words.MODELS;
    }

    public List<Choice> criteria() {
        return Choice.of(Kind.class, Kind::words);
    }

    public List<Choice> aims() {
        return Choice.of(TrialSet.Aim.class, Words::aim);
    }

    /** A limit on two of the lines, by their letters. */
    public String example() {
        return rows.size() < 2
                ? "A + B <= 45"
                : rows.get(0).letter() + " + " + rows.get(1).letter() + " <= 45";
    }

    /** Whether anything was typed or refused in some fields, so that they are not folded away. */
    public boolean touched(String... fields) {
        return Arrays.stream(fields)
                .anyMatch(
                        field -> typed.hasProblem(field) || !typed.value(field).isEmpty());
    }

    /** Whether the runs are chosen otherwise than proposed. */
    public boolean chosenOtherwise() {
        return !typed.value("model", "QUADRATIC").equals("QUADRATIC")
                || !typed.value("criterion", "I").equals("I")
                || typed.hasProblem("criterion")
                || typed.hasProblem("steps")
                || typed.hasProblem("model");
    }

    /** Where the form goes, with what a later look at the same address needs. */
    public String path() {
        return "/trials/new?product=" + product + "&version=" + version;
    }
}
