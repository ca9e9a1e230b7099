package stillroom.formulary.trial;

import java.util.List;
import java.util.Map;

/**
 * Trials that answer one question about a product.
 *
 * @param key name of the document
 * @param name as the maker calls it
 * @param base product and version that the trials vary
 * @param product number of the product that holds one version per run
 * @param components lines that vary; together they always take the same share of the formula
 * @param share of the components together [mass percent of the formula]
 * @param constraints limits on weighted sums of the components, as typed, in percent of the formula
 * @param variables process variables
 * @param responses what is measured
 * @param design how the runs were chosen
 * @param runs in the order in which they are made
 */
public record TrialSet(
        String key,
        String name,
        Base base,
        long product,
        List<Component> components,
        double share,
        List<String> constraints,
        List<Variable> variables,
        List<Response> responses,
        Chosen design,
        List<Run> runs) {
    /** Name of the drawer in which sets are kept. */
    public static final String DRAWER = "trial-set";

    public TrialSet {
        components = List.copyOf(components);
        constraints = List.copyOf(constraints);
        variables = List.copyOf(variables);
        responses = List.copyOf(responses);
        runs = List.copyOf(runs);
    }

    /** A version of a product. */
    public record Base(long product, int version) {}

    /**
     * A line that varies.
     *
     * @param low least [mass percent of the formula]
     * @param high most [mass percent of the formula]
     */
    public record Component(String lineId, String name, double low, double high) {}

    /** A process variable with its lowest and highest setting, in its own unit. */
    public record Variable(String name, double low, double high) {}

    /** What is wanted of a response. */
    public enum Aim {
        NONE,
        LARGER,
        SMALLER,
        TARGET
    }

    /**
     * What is measured.
     *
     * @param low from here on it is of use at all (or already perfect, for SMALLER)
     * @param target wanted value of TARGET
     * @param high up to here it is of use (or already perfect, for LARGER)
     * @param panel whether several people score it, so that several figures stand for one run
     */
    public record Response(String name, String unit, Aim aim, double low, double target, double high, boolean panel) {}

    /**
     * How the runs were chosen.
     *
     * @param model linear, quadratic or special cubic, as the science names it
     * @param criterion D or I, or the name of a classical design
     */
    public record Chosen(String model, String criterion, int blocks, long seed) {}

    /**
     * One mixture to be made.
     *
     * @param version of the trials' product that holds its formula; also its number
     * @param order in which to make it
     * @param block day, from 1
     * @param fractions planned share of each component among the components, adding up to 1
     * @param settings of the process variables, in their units
     * @param measured by name of the response, the mean where a panel scored it; absent where not measured yet
     * @param scores of a panel one by one, by name of the response; absent where there are none
     * @param note what was seen
     */
    public record Run(
            int version,
            int order,
            int block,
            List<Double> fractions,
            List<Double> settings,
            Map<String, Double> measured,
            Map<String, List<Double>> scores,
            String note) {
        public Run {
            fractions = List.copyOf(fractions);
            settings = List.copyOf(settings);
            measured = Map.copyOf(measured);
            scores = Map.copyOf(scores);
        }
    }

    /** Under the name of its document, with the product that holds its runs. */
    public TrialSet kept(String ownKey, long ownProduct) {
        return new TrialSet(
                ownKey, name, base, ownProduct, components, share, constraints, variables, responses, design, runs);
    }

    public TrialSet withRuns(List<Run> changed) {
        return new TrialSet(
                key, name, base, product, components, share, constraints, variables, responses, design, changed);
    }
}
