package stillroom.desk.batches.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.shell.Judgement;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.evaluation.Portion;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;

/**
 * The judgement of a batch as it would be if nothing were mended and all that is open were weighed as planned.
 *
 * @param findings warnings that the formula as written does not have
 */
public record Kept(String says, List<Finding> findings) {
    public Kept {
        findings = List.copyOf(findings);
    }

    static Optional<Kept> of(BatchWork work) {
        return work.plan().map(plan -> judged(work, plan));
    }

    private static Kept judged(BatchWork work, Plan plan) {
        Set<String> before =
                Judgement.of(
                                work.desk(),
                                Subjects.of(work.formula(), work.product().brief()),
                                work.book())
                        .findings()
                        .stream()
                        .filter(finding -> finding.kind().isWarning())
                        .map(Finding::rule)
                        .collect(Collectors.toSet());
        List<Finding> now = Judgement.of(
                        work.desk(), subject(work, plan), work.madeBook().book())
                .findings()
                .stream()
                .filter(finding -> finding.kind().isWarning() && !before.contains(finding.rule()))
                .toList();
        return new Kept(
                now.isEmpty()
                        ? "No rule that the formula keeps would be broken by it. Whether it feels, pours and keeps as it should, only a look at it can tell."
                        : "What the formula keeps, this batch would not:",
                now);
    }

    private static Subject subject(BatchWork work, Plan plan) {
        List<Grams> masses = new ArrayList<>();
        for (PlannedLine line : plan.lines()) {
            Grams poured = work.state().poured(line.lineId());
            masses.add(poured.compareTo(line.target()) > 0 ? poured : line.target());
        }
        Grams whole = Grams.sum(masses);
        List<Portion> portions = new ArrayList<>();
        for (int i = 0; i < plan.lines().size(); i++) {
            PlannedLine line = plan.lines().get(i);
            String phase = work.formula().phase(line.phaseId()).map(Phase::name).orElse(line.phaseId());
            double share = Percent.share(masses.get(i), whole).massFraction();
            portions.add(new Portion(line.lineId(), phase, line.materialKey(), MassFraction.exactly(share)));
        }
        return new Subject(work.product().brief(), portions, work.formula().phases(), 0, Optional.empty());
    }
}
