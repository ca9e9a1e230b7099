package stillroom.desk.products;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillroom.desk.products.ComparePage.Row;
import stillroom.desk.shell.Format;
import stillroom.formulary.formula.Comparison;
import stillroom.formulary.formula.Comparison.Pair;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Step;

/** The rows of two versions side by side, the changes in words. */
final class SideBySide {
    private final Comparison comparison;
    private final Side left;
    private final Side right;

    private static final int COMPOSITION_DECIMALS = 4;
    private static final double LEAST_SHOWN = 1e-4;

    SideBySide(Comparison comparison, Side left, Side right) {
        this.comparison = comparison;
        this.left = left;
        this.right = right;
    }

    List<Row> lines() {
        return comparison.lines().stream().map(this::line).toList();
    }

    private Row line(Pair<Line> pair) {
        String before = pair.left().map(placed -> left.amount(placed.what())).orElse("");
        String after = pair.right().map(placed -> right.amount(placed.what())).orElse("");
        String name = pair.right()
                .map(placed -> right.name(placed.what()))
                .or(() -> pair.left().map(placed -> left.name(placed.what())))
                .orElse("");
        return new Row(name, before, after, String.join("; ", changes(pair)));
    }

    private List<String> changes(Pair<Line> pair) {
        if (pair.left().isEmpty()) {
            return List.of("new, in " + pair.right().orElseThrow().phase().name());
        }
        if (pair.right().isEmpty()) {
            return List.of("taken out, was in " + pair.left().get().phase().name());
        }
        Line before = pair.left().get().what();
        Line after = pair.right().get().what();
        List<String> changes = new ArrayList<>();
        if (!before.materialKey().equals(after.materialKey())) {
            changes.add("takes the place of " + left.name(before));
        }
        if (!before.amount().equals(after.amount())) {
            changes.add("amount changed");
        } else if (!left.percent(before).equals(right.percent(after))) {
            changes.add("comes to another amount");
        }
        if (pair.moved()) {
            changes.add("moved from " + pair.left().get().phase().name() + " to "
                    + pair.right().get().phase().name());
        }
        if (!before.note().equals(after.note())) {
            changes.add("note changed");
        }
        return changes;
    }

    List<Row> steps() {
        return comparison.steps().stream().map(SideBySide::step).toList();
    }

    private static Row step(Pair<Step> pair) {
        String before = pair.left().map(placed -> words(placed.what())).orElse("");
        String after = pair.right().map(placed -> words(placed.what())).orElse("");
        String phase =
                pair.right().or(pair::left).map(placed -> placed.phase().name()).orElse("");
        String change = pair.left().isEmpty()
                ? "new"
                : pair.right().isEmpty()
                        ? "taken out"
                        : !before.equals(after) ? "changed" : pair.moved() ? "moved to another phase" : "";
        return new Row(phase, before, after, change);
    }

    /** A step in one line. */
    static String words(Step step) {
        List<String> parts = new ArrayList<>(List.of(step.doing()));
        step.celsius().ifPresent(celsius -> parts.add(DraftWriting.plain(celsius) + " °C"));
        step.minutes().ifPresent(minutes -> parts.add(DraftWriting.plain(minutes) + " min"));
        parts.add(step.speed());
        parts.add(step.seeIt().isEmpty() ? "" : "done when: " + step.seeIt());
        parts.add(step.caution().isEmpty() ? "" : "caution: " + step.caution());
        return String.join("; ", parts.stream().filter(part -> !part.isEmpty()).toList());
    }

    /** The figures of both by name; one that only one side has is not known on the other. */
    List<Row> figures() {
        Map<String, Amounts.Row> before = left.amounts().byName();
        Map<String, Amounts.Row> after = right.amounts().byName();
        Set<String> names = new LinkedHashSet<>(before.keySet());
        names.addAll(after.keySet());
        List<Row> rows = new ArrayList<>();
        for (String name : names) {
            String one = shown(before.get(name));
            String other = shown(after.get(name));
            rows.add(new Row(name, one, other, one.equals(other) ? "" : "changed"));
        }
        return rows;
    }

    /** What is in the pot, substance by substance, nominal. */
    List<Row> composition() {
        Set<String> names = new LinkedHashSet<>(left.substances().keySet());
        names.addAll(right.substances().keySet());
        return names.stream().map(this::substance).toList();
    }

    private Row substance(String name) {
        String before = percent(left.substances().get(name));
        String after = percent(right.substances().get(name));
        return new Row(name, before, after, before.equals(after) ? "" : "changed");
    }

    private static String percent(@org.jspecify.annotations.Nullable Double percent) {
        if (percent == null) {
            return "none";
        }
        boolean trace = percent > 0 && percent < LEAST_SHOWN / 2;
        return (trace ? "under " + Format.figure(LEAST_SHOWN, COMPOSITION_DECIMALS) : shown(percent)) + " %";
    }

    private static String shown(double percent) {
        return Format.figure(percent, COMPOSITION_DECIMALS);
    }

    private static String shown(Amounts.@org.jspecify.annotations.Nullable Row row) {
        if (row == null) {
            return "none";
        }
        return row.isKnown() ? (row.shown() + " " + row.unit()).strip() : "not known: " + row.how();
    }
}
