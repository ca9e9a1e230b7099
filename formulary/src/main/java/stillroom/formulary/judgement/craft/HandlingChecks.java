package stillroom.formulary.judgement.craft;

import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.pot.Emulsion;
import stillroom.formulary.judgement.pot.Item;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.judgement.pot.Words;
import stillroom.formulary.material.Family;

/** Care for the person at the bench. */
final class HandlingChecks {
    private static final Set<String> LYES = Set.of("sodium-hydroxide", "potassium-hydroxide", "lithium-hydroxide");

    private HandlingChecks() {}

    static void corrosive(Pot pot, Consumer<Finding> report) {
        List<Item> strong =
                pot.items().stream().filter(HandlingChecks::isStrong).toList();
        if (strong.isEmpty()) {
            return;
        }
        report.accept(new Finding(
                Finding.Kind.LOOK_AT_THIS,
                "handling.corrosive",
                CraftChecks.PRACTICE,
                strong.stream().map(item -> item.portion().lineId()).toList(),
                List.of(),
                Words.list(strong.stream().map(Item::name).distinct().toList())
                        + ": strong acid or base. Goggles and gloves; into the water, never water onto it; dilute first.",
                "Follow the material's safety data sheet."));
    }

    private static boolean isStrong(Item item) {
        boolean acidOrBase = item.is(Family.ACID) || item.is(Family.BASE);
        return item.material()
                .map(card -> card.composition().stream()
                                .anyMatch(part -> LYES.contains(part.substance())
                                        && part.massFraction().upper() >= 0.02)
                        || (acidOrBase
                                && card.ownPh()
                                        .map(ph -> ph.low() <= 1.5 || ph.high() >= 12.5)
                                        .orElse(false)))
                .orElse(false);
    }

    /** Lye and fat in the amounts of soap making: another craft with its own safety arithmetic. */
    static void lye(Pot pot, Consumer<Finding> report) {
        List<Share> lyes = pot.where(share -> LYES.contains(share.key()));
        double oils = Pot.sum(Emulsion.oils(pot.shares())) + Pot.sum(pot.ingredients("fatty-acid"));
        if (Pot.sum(lyes) >= 0.01 && oils >= 0.15) {
            report.accept(new Finding(
                    Finding.Kind.CANNOT_JUDGE,
                    "scope.lye-soap",
                    CraftChecks.PRACTICE,
                    Pot.lines(lyes),
                    List.of(),
                    "Soap made with lye is out of scope; "
                            + "what is computed here does not follow the saponification.",
                    "Use a lye calculation made for soap."));
        }
    }
}
