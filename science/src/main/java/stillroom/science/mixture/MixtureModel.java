package stillroom.science.mixture;

import java.util.ArrayList;
import java.util.List;

/**
 * A Scheffé polynomial: blending terms without a constant, and terms with process variables.
 *
 * <p>Source: scheffe-1958 (blending); kowalski-2000 (the linear blending of process variables).
 *
 * @param components how many
 * @param processes how many process variables, coded -1 to 1
 * @param terms one per coefficient
 */
public record MixtureModel(int components, int processes, List<Term> terms) {
    public MixtureModel {
        terms = List.copyOf(terms);
    }

    /** A model of the mixture alone. */
    public static MixtureModel of(int components, Blending blending) {
        return new MixtureModel(components, 0, blendingTerms(components, blending));
    }

    /** A model of mixture and process variables. */
    public static MixtureModel of(int components, Blending blending, int processes, ProcessTerms how) {
        List<Term> blends = blendingTerms(components, blending);
        if (processes == 0) {
            return new MixtureModel(components, 0, blends);
        }
        List<Term> crossed = how == ProcessTerms.CROSSED ? blends : blendingTerms(components, Blending.LINEAR);
        List<Term> terms = new ArrayList<>(blends);
        for (int k = 0; k < processes; k++) {
            int variable = k;
            crossed.forEach(term -> terms.add(term.times(variable)));
        }
        for (int k = 0; k < processes; k++) {
            for (int l = k; l < processes; l++) {
                pair(how, k, l, crossed, terms);
            }
        }
        return new MixtureModel(components, processes, terms);
    }

    private static void pair(ProcessTerms how, int k, int l, List<Term> crossed, List<Term> terms) {
        switch (how) {
            case LINEAR -> {}
            case QUADRATIC -> terms.add(new Term(List.of(), List.of(k, l)));
            case CROSSED -> {
                if (k != l) {
                    crossed.forEach(term -> terms.add(term.times(k, l)));
                }
            }
        }
    }

    private static List<Term> blendingTerms(int q, Blending blending) {
        List<Term> terms = new ArrayList<>();
        for (int i = 0; i < q; i++) {
            terms.add(Term.of(i));
        }
        for (int i = 0; i < q && blending != Blending.LINEAR; i++) {
            for (int j = i + 1; j < q; j++) {
                terms.add(Term.of(i, j));
            }
        }
        for (int i = 0; i < q && blending == Blending.SPECIAL_CUBIC; i++) {
            for (int j = i + 1; j < q; j++) {
                for (int k = j + 1; k < q; k++) {
                    terms.add(Term.of(i, j, k));
                }
            }
        }
        return terms;
    }

    /** The largest power in which a point enters along a straight line. */
    public int degree() {
        return terms.stream().mapToInt(Term::order).max().orElse(0);
    }

    /** The regressors at a point. @param point fractions (or pseudocomponents), then coded process variables */
    public double[] at(double[] point) {
        double[] values = new double[terms.size()];
        new Regressors(this).fill(point, values);
        return values;
    }
}
