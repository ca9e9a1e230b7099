package stillroom.desk.shell;

import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.rule.GovernedClaim;

/** What a finding is called: its kind, or, for what the claims gate found, the gate's own word. */
public final class FindingWords {
    private static final String CLAIMS = "claims.";

    private FindingWords() {}

    public static String of(Finding finding) {
        if (!finding.rule().startsWith(CLAIMS)) {
            return Format.words(finding.kind());
        }
        return (finding.kind() == Finding.Kind.BREACH
                        ? GovernedClaim.Weight.GOVERNED
                        : GovernedClaim.Weight.NEEDS_EVIDENCE)
                .words();
    }
}
