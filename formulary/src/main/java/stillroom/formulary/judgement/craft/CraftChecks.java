package stillroom.formulary.judgement.craft;

import java.util.List;
import stillroom.formulary.judgement.pot.Check;

/** All checks of the bench, in the order in which a maker would look. */
public final class CraftChecks {
    static final String PRACTICE = "common practice, no source";

    private CraftChecks() {}

    /** Those whose answer depends on the day whose law is asked. */
    public static List<Check> dated() {
        return List.of(FragranceChecks::certificates, PreservationChecks::present, NitrosamineChecks::secondaryAmines);
    }

    /** Those that find the same on every day. */
    public static List<Check> steady() {
        return List.of(
                BalanceChecks::total,
                KnowledgeChecks::compositions,
                KnowledgeChecks::loops,
                KnowledgeChecks::perfume,
                FragranceChecks::furocoumarins,
                FragranceChecks::youngest,
                UsageChecks::range,
                PhChecks::materials,
                PhChecks::band,
                PhChecks::skin,
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
                BriefChecks::price,
                HandlingChecks::corrosive,
                HandlingChecks::lye);
    }
}
