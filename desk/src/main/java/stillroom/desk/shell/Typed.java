package stillroom.desk.shell;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stillroom.formulary.Problem;

/**
 * A form as it stands on the page: what was typed, kept to the letter, and what is wrong with it.
 *
 * @param values by field name
 */
public record Typed(Map<String, String> values, List<Problem> problems) {
    public static final Typed NOTHING = new Typed(Map.of(), List.of());

    public Typed {
        values = Map.copyOf(values);
        problems = List.copyOf(problems);
    }

    /** What was typed into a field, or what stands there otherwise. */
    public String value(String field, String otherwise) {
        return values.getOrDefault(field, otherwise);
    }

    public String value(String field) {
        return value(field, "");
    }

    /** What is wrong with a field, empty when nothing is. */
    public String problem(String field) {
        return problems.stream()
                .filter(problem -> problem.field().equals(field))
                .map(Problem::sentence)
                .distinct()
                .collect(Collectors.joining(" "));
    }

    public boolean hasProblem(String field) {
        return problems.stream().anyMatch(problem -> problem.field().equals(field));
    }

    public boolean isSound() {
        return problems.isEmpty();
    }
}
