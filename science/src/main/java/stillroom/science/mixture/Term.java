package stillroom.science.mixture;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A product of components and process variables, the regressor of one coefficient.
 *
 * @param components their indices, ascending
 * @param processes indices of the process variables, ascending; one twice for its square
 */
public record Term(List<Integer> components, List<Integer> processes) {
    public Term {
        components = List.copyOf(components);
        processes = List.copyOf(processes);
    }

    public static Term of(Integer... components) {
        return new Term(List.of(components), List.of());
    }

    Term times(Integer... moreProcesses) {
        return new Term(components, List.of(moreProcesses));
    }

    public int order() {
        return components.size() + processes.size();
    }

    /** Whether this term contains the other, and is not the same. */
    public boolean above(Term other) {
        return !equals(other) && components.containsAll(other.components) && countsCover(processes, other.processes);
    }

    private static boolean countsCover(List<Integer> larger, List<Integer> smaller) {
        return smaller.stream()
                .allMatch(k -> larger.stream().filter(k::equals).count()
                        >= smaller.stream().filter(k::equals).count());
    }

    /** x1 x2 w1, counted from one. */
    public String name() {
        return words(i -> "x" + (i + 1), k -> "w" + (k + 1));
    }

    /** With the maker's names. */
    public String name(List<String> componentNames, List<String> processNames) {
        return components.stream().map(componentNames::get).collect(Collectors.joining(" × "))
                + (components.isEmpty() || processes.isEmpty() ? "" : " × ")
                + processes.stream().map(processNames::get).collect(Collectors.joining(" × "));
    }

    private String words(
            java.util.function.IntFunction<String> component, java.util.function.IntFunction<String> process) {
        return java.util.stream.Stream.concat(
                        components.stream().map(component::apply),
                        processes.stream().map(process::apply))
                .collect(Collectors.joining(" "));
    }
}
