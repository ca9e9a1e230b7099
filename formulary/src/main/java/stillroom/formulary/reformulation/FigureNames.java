package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.Family;

/** What the figures are called that may have a band of their own. */
public final class FigureNames {
    /** The emulsifiers' HLB, off what the oils require [units]. */
    public static final String HLB_AGAINST_OILS = "HLB off what the oils require";

    private FigureNames() {}

    public static String activeMatter(ChargeClass charge) {
        return Wording.capital(charge.name()) + " active matter";
    }

    /** What the emulsifiers have, or what the oils require. */
    public static boolean isHlb(String figure) {
        return figure.equals(Requirements.HLB) || figure.equals(Requirements.REQUIRED_HLB);
    }

    /** As supplied. */
    public static String shelf(Family family) {
        return Wording.capital(family.name()) + " shelf";
    }

    /** Of whatever stands in for a material that goes. */
    public static String dose(String materialName) {
        return "Dose in place of " + materialName;
    }

    /** Kept by a band of its own where a formula has it: of surfactants, water and dosed lines there is one each. */
    public static boolean isShelf(Family family) {
        return Candidates.isFree(family) && family != Family.WATER && family != Family.SURFACTANT;
    }

    /** All but doses. */
    public static List<String> all() {
        List<String> names = new ArrayList<>(List.of(
                Requirements.WATER,
                Requirements.ANIONIC_CHARGE,
                Requirements.CATIONIC_CHARGE,
                Requirements.HLB,
                Requirements.REQUIRED_HLB,
                HLB_AGAINST_OILS));
        Arrays.stream(ChargeClass.values()).map(FigureNames::activeMatter).forEach(names::add);
        Arrays.stream(Family.values())
                .filter(FigureNames::isShelf)
                .map(FigureNames::shelf)
                .forEach(names::add);
        return names;
    }
}
