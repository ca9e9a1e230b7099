package stillroom.formulary.evaluation;

import java.util.ArrayList;
import java.util.List;

/**
 * How a judgement differs from another one, such as of the same formula on a later day.
 *
 * @param appeared findings of the later one that the earlier one lacks, or has in another weight
 * @param gone findings of the earlier one that the later one lacks, or has in another weight
 */
public record Change(List<Finding> appeared, List<Finding> gone) {
    public Change {
        appeared = List.copyOf(appeared);
        gone = List.copyOf(gone);
    }

    public boolean isEmpty() {
        return appeared.isEmpty() && gone.isEmpty();
    }

    /** What the later judgement says otherwise; findings are the same when rule, weight and lines agree. */
    public static Change between(Evaluation earlier, Evaluation later) {
        return new Change(without(later.findings(), earlier.findings()), without(earlier.findings(), later.findings()));
    }

    private static List<Finding> without(List<Finding> findings, List<Finding> others) {
        List<Finding> left = new ArrayList<>();
        for (Finding finding : findings) {
            boolean there = others.stream()
                    .anyMatch(other -> other.rule().equals(finding.rule())
                            && other.kind() == finding.kind()
                            && other.lines().equals(finding.lines()));
            if (!there) {
                left.add(finding);
            }
        }
        return left;
    }
}
