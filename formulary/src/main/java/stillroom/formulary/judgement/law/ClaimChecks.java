package stillroom.formulary.judgement.law;

import java.util.List;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.claim.ClaimsGate;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.rule.GovernedClaim;

/** What the claims gate says, as findings. */
final class ClaimChecks {
    /** The row on diseases at large. */
    private static final String GENERAL = "claims.skin-disease";

    private ClaimChecks() {}

    static void claims(Pot pot, Consumer<Finding> report) {
        List<ClaimsGate.Hit> hits =
                new ClaimsGate(pot.rules()).judge(pot.brief()).hits();
        for (ClaimsGate.Hit hit : hits) {
            if (isSaidCloser(hit, hits)) {
                continue;
            }
            boolean governed = hit.claim().weight() == GovernedClaim.Weight.GOVERNED;
            String law = hit.claim().law().isEmpty() ? "" : " " + hit.claim().law();
            report.accept(new Finding(
                    governed ? Finding.Kind.BREACH : Finding.Kind.LOOK_AT_THIS,
                    hit.claim().id(),
                    hit.claim().source(),
                    List.of(),
                    List.of(),
                    "\"" + hit.said() + "\": " + hit.claim().says() + law,
                    governed
                            ? "Leave the claim out, or keep this as a private note and follow that law."
                            : "Keep the evidence with the product, or leave the claim out."));
        }
    }

    /** "Treats acne" is one claim: the row that names the complaint says it, the one on diseases at large need not. */
    private static boolean isSaidCloser(ClaimsGate.Hit hit, List<ClaimsGate.Hit> hits) {
        return hit.claim().id().equals(GENERAL)
                && hits.stream()
                        .anyMatch(other -> other != hit
                                && other.claim().weight() == GovernedClaim.Weight.GOVERNED
                                && other.said().equals(hit.said()));
    }
}
