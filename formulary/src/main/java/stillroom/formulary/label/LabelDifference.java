package stillroom.formulary.label;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * How the label of what was made departs from the printed label of its version; any of it holds the release.
 *
 * @param missing names that what was made needs and the printed label lacks
 * @param surplus names that the printed label has and what was made lacks
 * @param order pairs of names that stand in the wrong order for what was made, "A before B" as it should be
 * @param warnings keys of warnings that what was made needs and the printed label lacks
 */
public record LabelDifference(List<String> missing, List<String> surplus, List<String> order, List<String> warnings) {
    /** Weighing scatter that does not turn an order round, relative. */
    private static final double SCATTER = 0.01;

    public LabelDifference {
        missing = List.copyOf(missing);
        surplus = List.copyOf(surplus);
        order = List.copyOf(order);
        warnings = List.copyOf(warnings);
    }

    public boolean isEmpty() {
        return missing.isEmpty() && surplus.isEmpty() && order.isEmpty() && warnings.isEmpty();
    }

    /** One sentence without its stop for each departure; empty where what was made fits the label. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        missing.forEach(name -> sentences.add(name + " is in the batch and not on the label"));
        surplus.forEach(name -> sentences.add(name + " is on the label and not in the batch"));
        order.forEach(pair -> sentences.add("the order should be " + pair));
        warnings.forEach(key -> sentences.add("the warning \"" + key + "\" is missing"));
        return sentences;
    }

    /** Holds the printed label of a version against the label that what was made would get. */
    public static LabelDifference between(Label printed, Label made) {
        Set<String> onLabel = names(printed);
        Set<String> needed = names(made);
        List<String> missing =
                needed.stream().filter(name -> !onLabel.contains(name)).toList();
        List<String> surplus =
                onLabel.stream().filter(name -> !needed.contains(name)).toList();
        List<String> warnings = made.warnings().stream()
                .map(LabelWarning::key)
                .filter(key -> printed.warnings().stream()
                        .noneMatch(warning -> warning.key().equals(key)))
                .toList();
        return new LabelDifference(missing, surplus, order(printed, made), warnings);
    }

    private static Set<String> names(Label label) {
        Set<String> names = new LinkedHashSet<>();
        label.ingredients().forEach(entry -> names.add(entry.name()));
        return names;
    }

    /** Ordered names of what was made that the printed label shows the other way round. */
    private static List<String> order(Label printed, Label made) {
        List<String> printedNames =
                printed.ingredients().stream().map(LabelEntry::name).toList();
        List<String> wrong = new ArrayList<>();
        List<LabelEntry> inOrder = made.ingredients().stream()
                .filter(entry -> printedNames.contains(entry.name()))
                .filter(entry -> entry.block() == LabelEntry.Block.ORDERED || entry.block() == LabelEntry.Block.FREE)
                .toList();
        for (int i = 0; i < inOrder.size(); i++) {
            for (int j = i + 1; j < inOrder.size(); j++) {
                if (clearlyBefore(inOrder.get(i), inOrder.get(j))
                        && printedNames.indexOf(inOrder.get(i).name())
                                > printedNames.indexOf(inOrder.get(j).name())) {
                    wrong.add(
                            inOrder.get(i).name() + " before " + inOrder.get(j).name());
                }
            }
        }
        return wrong;
    }

    /** Whether the law fixes the order of the two beyond the scatter of weighing. */
    private static boolean clearlyBefore(LabelEntry more, LabelEntry less) {
        return more.block() == LabelEntry.Block.ORDERED
                && more.share().nominal() * (1 - SCATTER) > less.share().nominal();
    }
}
