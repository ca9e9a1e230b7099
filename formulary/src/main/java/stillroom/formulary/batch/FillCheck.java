package stillroom.formulary.batch;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import stillroom.formulary.Problem;
import stillroom.formulary.quantity.Grams;
import stillroom.science.weighing.NetContents;

/**
 * Whether filled containers hold what is declared, by the packer's three rules. Figures in g; a content declared in ml
 * is turned into g with the density as filled. The law of the place of sale decides.
 *
 * @param mean of the net contents weighed
 * @param deviation standard deviation of the net contents
 * @param leastMean the mean has to reach this
 * @param tolerableError by which a single container may be short
 * @param beyondError containers short by more than the tolerable error
 * @param beyondTwice containers short by more than twice that: never to be sold
 */
public record FillCheck(
        int weighed,
        double mean,
        double deviation,
        double leastMean,
        BigDecimal tolerableError,
        int beyondError,
        int beyondTwice,
        List<String> says) {
    /** Share that may be short by more than the tolerable error; from memory, "few" in the law. */
    private static final double FEW = 0.025;
    /** A check may be wrong by a fifth of the tolerable error. Source: WELMEC guide 6.9. */
    private static final double FIFTH = 0.2;

    public FillCheck {
        says = List.copyOf(says);
    }

    public static List<Problem> problems(Grams nominal, List<Grams> net) {
        List<Problem> problems = new ArrayList<>();
        if (nominal.compareTo(Grams.of("5")) < 0 || nominal.compareTo(Grams.of("10000")) > 0) {
            problems.add(new Problem("nominal", "The table covers contents of 5 g to 10 kg."));
        }
        if (net.size() < 2) {
            problems.add(new Problem("net", "Weigh at least two containers."));
        }
        return problems;
    }

    /**
     * @param net contents of each container weighed, tare taken off
     * @param tareDeviation standard deviation of the empty containers, 0 where each was tared
     */
    public static FillCheck of(Grams nominal, List<Grams> net, Grams tareDeviation) {
        double mean = net.stream().mapToDouble(Grams::doubleValue).average().orElseThrow();
        double squares = net.stream()
                .mapToDouble(one -> Math.pow(one.doubleValue() - mean, 2))
                .sum();
        double deviation = Math.sqrt(squares / (net.size() - 1));
        BigDecimal error = NetContents.tolerableNegativeError(nominal.value());
        double leastMean = NetContents.leastMean(nominal.doubleValue(), deviation, net.size());
        int beyondError = below(net, nominal.value().subtract(error));
        int beyondTwice = below(net, nominal.value().subtract(error).subtract(error));
        FillCheck bare =
                new FillCheck(net.size(), mean, deviation, leastMean, error, beyondError, beyondTwice, List.of());
        return new FillCheck(
                net.size(), mean, deviation, leastMean, error, beyondError, beyondTwice, bare.sentences(tareDeviation));
    }

    /** Whether none of the three rules speaks against the containers weighed. */
    public boolean passes() {
        return mean >= leastMean && beyondError <= FEW * weighed && beyondTwice == 0;
    }

    private List<String> sentences(Grams tareDeviation) {
        List<String> says = new ArrayList<>();
        if (mean < leastMean) {
            says.add("The mean is below what the average test asks for: fill more.");
        }
        if (beyondTwice > 0) {
            says.add(beyondTwice + " short by more than twice the tolerable error: not to be sold.");
        }
        if (beyondError > FEW * weighed) {
            says.add(beyondError + " of " + weighed + " short by more than the tolerable error: too many.");
        }
        if (2 * tareDeviation.doubleValue() > FIFTH * tolerableError.doubleValue()) {
            says.add("The empty containers differ too much for a mean tare: weigh each one empty.");
        }
        return says;
    }

    private static int below(List<Grams> net, BigDecimal bound) {
        return (int)
                net.stream().filter(one -> one.value().compareTo(bound) < 0).count();
    }
}
