package stillroom.formulary.evaluation;

import java.time.LocalDate;
import java.util.List;

/**
 * The whole judgement.
 *
 * @param asOf the day whose law was asked
 * @param lawRecordedOn the newest day on which the rule tables were read
 * @param findings weightiest first
 * @param preservation the preservatives at the product's pH; empty where that or a water phase is not known
 */
public record Evaluation(
        LocalDate asOf,
        String market,
        LocalDate lawRecordedOn,
        Figures figures,
        Composition composition,
        List<Finding> findings,
        List<PreservativeState> preservation) {
    public Evaluation {
        findings = List.copyOf(findings);
        preservation = List.copyOf(preservation);
    }

    public List<Finding> warnings() {
        return findings.stream().filter(f -> f.kind().isWarning()).toList();
    }
}
