package stillroom.desk.cli;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.constants.AcidConstant;
import stillroom.formulary.constants.AcidConstants;
import stillroom.formulary.constants.CarbonDioxide;
import stillroom.science.equilibrium.AcidBase;
import stillroom.science.equilibrium.Component;
import stillroom.science.equilibrium.Dissociation;
import stillroom.science.equilibrium.DissolvedGas;
import stillroom.science.equilibrium.Solution;
import stillroom.science.equilibrium.StrongIon;

/** Reads a solution from JSON. What cannot be read is refused with a sentence that names it. */
final class SolutionReader {
    private final AcidConstants constants;

    SolutionReader(AcidConstants constants) {
        this.constants = constants;
    }

    /** @throws IllegalArgumentException where something is missing, unknown or out of bounds */
    Solution read(JsonNode asked) {
        if (!asked.isObject()) {
            throw new IllegalArgumentException("a solution is an object with \"components\"");
        }
        List<Component> components = new ArrayList<>();
        List<StrongIon> ions = new ArrayList<>();
        for (JsonNode part : asked.path("components")) {
            add(part, components, ions);
        }
        double celsius = asked.has("celsius") ? number(asked, "celsius", "the solution") : 25;
        return new Solution(components, ions, celsius, air(asked.path("air")));
    }

    /** Takes one acid, base or strong ion into the lists. */
    void add(JsonNode part, List<Component> components, List<StrongIon> ions) {
        String name = part.path("name").asText("");
        double molPerKg = number(part, "molPerKg", "component \"" + name + "\"");
        if (part.has("pKa")) {
            components.add(new Component(stated(name, part), molPerKg));
            return;
        }
        if (part.has("charge")) {
            ions.add(new StrongIon(name, whole(part, "charge", name), molPerKg));
            return;
        }
        AcidConstant row = constants
                .find(name)
                .orElseThrow(
                        () -> new IllegalArgumentException(
                                "\"" + name
                                        + "\" is not in the table of acids and bases; state its \"charge\" and \"pKa\", or its \"charge\" alone for a strong ion"));
        if (row.strong()) {
            ions.add(new StrongIon(name, row.chargeFullyProtonated(), molPerKg));
        } else {
            components.add(new Component(row.system(), molPerKg));
        }
    }

    private static AcidBase stated(String name, JsonNode part) {
        List<Dissociation> steps = new ArrayList<>();
        JsonNode enthalpies = part.path("enthalpyKJPerMol");
        for (int step = 0; step < part.get("pKa").size(); step++) {
            steps.add(new Dissociation(
                    part.get("pKa").get(step).asDouble(), enthalpies.path(step).asDouble(0), 0));
        }
        return new AcidBase(name, part.has("charge") ? whole(part, "charge", name) : 0, steps);
    }

    private Optional<DissolvedGas> air(JsonNode air) {
        if (air.isMissingNode() || air.isNull() || air.asText().equals("closed")) {
            return Optional.empty();
        }
        if (!air.asText().equals("open") && !air.isNumber()) {
            throw new IllegalArgumentException(
                    "\"air\" is \"closed\", \"open\", or the partial pressure of CO2 in atm");
        }
        double partsPerMillion = air.isNumber() ? air.asDouble() * 1e6 : CarbonDioxide.OUTDOOR_PARTS_PER_MILLION;
        return Optional.of(CarbonDioxide.inAir(constants, partsPerMillion));
    }

    static double number(JsonNode part, String field, String of) {
        JsonNode value = part.path(field);
        if (!value.isNumber()) {
            throw new IllegalArgumentException("\"" + field + "\" of " + of + " must be a number");
        }
        return value.asDouble();
    }

    private static int whole(JsonNode part, String field, String of) {
        JsonNode value = part.path(field);
        if (!value.isInt()) {
            throw new IllegalArgumentException("\"" + field + "\" of \"" + of + "\" must be a whole number");
        }
        return value.asInt();
    }
}
