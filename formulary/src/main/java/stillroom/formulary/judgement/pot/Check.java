package stillroom.formulary.judgement.pot;

import java.util.function.Consumer;
import stillroom.formulary.evaluation.Finding;

/** One thing that is looked for; pure, and silent when there is nothing to say. */
@FunctionalInterface
public interface Check {
    void look(Pot pot, Consumer<Finding> report);
}
