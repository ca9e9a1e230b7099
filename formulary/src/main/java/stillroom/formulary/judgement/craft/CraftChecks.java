package stillroom.formulary.judgement.craft;

import java.util.List;
import stillroom.formulary.judgement.pot.Check;

/** All checks of the bench, in the order in which a maker would look. */
public final class CraftChecks {
    static final String PRACTICE = "common practice, no source";

    private CraftChecks() {}

    public static List<Check> all() {
        return List.of(
                BalanceChecks::total,
                KnowledgeChecks::compositions,
                KnowledgeChecks::loops,
                KnowledgeChecks::perfume,
                FragranceChecks::certificates,
                FragranceChecks::furocoumarins,
                UsageChecks::range,
                PhChecks::materials,
                PhChecks::band,
                PhChecks::skin,
                PreservationChecks::present,
                PreservationChecks::inactivated,
                PreservationChecks::cationic,
                PreservationChecks::withoutWater,
                EmulsionChecks::emulsifier,
                EmulsionChecks::hlb,
                EmulsionChecks::perfume,
                ChargeChecks::surfactants,
                ChargeChecks::polymers,
                ThickenerChecks::electrolyte,
                ThickenerChecks::calcium,
                HeatChecks::materials,
                ChelatorChecks::extracts,
                OrderChecks::sequence,
                OrderChecks::wetting,
                NitrosamineChecks::secondaryAmines,
                BriefChecks::price,
                HandlingChecks::corrosive,
                HandlingChecks::lye);
    }
}
