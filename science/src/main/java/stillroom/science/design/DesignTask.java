package stillroom.science.design;

import java.util.ArrayList;
import java.util.List;
import stillroom.science.mixture.MixtureModel;
import stillroom.science.mixture.MixtureRegion;

/**
 * A question for a design.
 *
 * @param region the allowed mixtures
 * @param model what is to be fitted
 * @param runs how many mixtures in all, those already made included
 * @param wishes how to look for it
 */
public record DesignTask(MixtureRegion region, MixtureModel model, int runs, Wishes wishes) {
    /**
     * @param criterion what makes a design good
     * @param blocks in how many days or lots the new runs fall; those already made are the first, if there are any
     * @param repeats how many runs at least repeat another one
     * @param made runs already made, kept as they are
     * @param seed of the random starts
     */
    public record Wishes(Criterion criterion, int blocks, int repeats, List<Run> made, long seed) {
        public Wishes {
            made = List.copyOf(made);
        }

        public static Wishes plain() {
            return new Wishes(Criterion.D, 1, 0, List.of(), 1);
        }
    }

    /** What is wrong with it, in sentences. */
    public List<String> problems() {
        List<String> wrong = new ArrayList<>(region.problems());
        int terms = model.terms().size() + totalBlocks() - 1;
        if (runs < terms) {
            wrong.add(runs + " runs cannot tell " + terms + " terms apart: " + terms + " runs are the fewest"
                    + (totalBlocks() > 1 ? ", blocks included." : "."));
        }
        if (wishes.blocks() < 1 || wishes.repeats() < 0) {
            wrong.add("Blocks start at 1 and repeats at 0.");
        }
        if (runs >= terms && fresh() < Math.max(1, wishes.blocks())) {
            wrong.add(runs + " runs with " + wishes.made().size() + " already made leave too few for "
                    + (wishes.blocks() > 1 ? wishes.blocks() + " blocks." : "a new one."));
        }
        if (wishes.repeats() > 0 && runs - wishes.repeats() < model.terms().size()) {
            wrong.add(runs + " runs with " + wishes.repeats() + " repeats leave " + (runs - wishes.repeats())
                    + " different ones for " + model.terms().size() + " terms.");
        }
        madeProblems(wrong);
        return wrong;
    }

    private void madeProblems(List<String> wrong) {
        for (int i = 0; i < wishes.made().size(); i++) {
            Run made = wishes.made().get(i);
            double sum =
                    made.fractions().stream().mapToDouble(Double::doubleValue).sum();
            if (made.fractions().size() != region.components() || Math.abs(sum - 1) > 1e-6) {
                wrong.add("Run " + (i + 1) + " already made has to name " + region.components()
                        + " fractions that add up to 1.");
            } else if (made.process().size() != model.processes()) {
                wrong.add("Run " + (i + 1) + " already made has to name " + model.processes() + " process variables.");
            }
        }
    }

    /** Runs still to be made. */
    int fresh() {
        return runs - wishes.made().size();
    }

    /** Blocks, that of the runs already made included. */
    int totalBlocks() {
        boolean earlier = wishes.blocks() > 1 && !wishes.made().isEmpty();
        return Math.max(1, wishes.blocks()) + (earlier ? 1 : 0);
    }
}
