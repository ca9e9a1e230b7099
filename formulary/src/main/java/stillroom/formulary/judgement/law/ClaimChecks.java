package stillroom.formulary.judgement.law;

import java.util.List;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.claim.ClaimsGate;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.rule.GovernedClaim;

/** What the claims gate says, as findings. */
final class ClaimChecks {
    private ClaimChecks() {}

    static void claims(Pot pot, Consumer<Finding> report) {
        for (ClaimsGate.Hit hit : new ClaimsGate(pot.rules()).judge(pot.brief()).hits()) {
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
}
