package stillroom.science.design;

import java.util.List;
import stillroom.science.mixture.Blending;
import stillroom.science.mixture.MixtureModel;
import stillroom.science.mixture.MixtureRegion;

/** Problems used by several tests. */
final class Designs {
    static final MixtureRegion BOUNDED_FOUR =
            new MixtureRegion(List.of(.1, .05, .1, 0.0), List.of(.6, .5, .7, .3), List.of());

    static final MixtureRegion BOUNDED_EIGHT = new MixtureRegion(
            List.of(.10, .05, 0.0, 0.0, .10, .05, 0.0, 0.0),
            List.of(.45, .50, .10, .40, .60, .20, .05, .05),
            List.of());

    private Designs() {}

    static DesignTask task(MixtureRegion region, Blending blending, int runs, DesignTask.Wishes wishes) {
        return new DesignTask(region, MixtureModel.of(region.components(), blending), runs, wishes);
    }

    static DesignTask.Wishes wishes(Criterion criterion, int blocks, int repeats, List<Run> made) {
        return new DesignTask.Wishes(criterion, blocks, repeats, made, 1);
    }

    static DesignAnswer answer(DesignTask task) {
        return OptimalDesigns.search(task, OptimalDesigns.USUAL_EFFORT, () -> false);
    }

    static MixtureDesign found(DesignTask task) {
        return answer(task).match(DesignAnswer.Found::design, refused -> {
            throw new AssertionError(refused.reasons());
        });
    }

    static List<String> refused(DesignTask task) {
        return answer(task).match(found -> List.of(), DesignAnswer.Refused::reasons);
    }
}
