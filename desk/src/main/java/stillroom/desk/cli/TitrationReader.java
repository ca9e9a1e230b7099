package stillroom.desk.cli;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillroom.science.dosing.Addition;
import stillroom.science.dosing.Corrector;
import stillroom.science.dosing.DosingTask;
import stillroom.science.dosing.Instrument;
import stillroom.science.dosing.KnownChemistry;
import stillroom.science.dosing.PhReading;
import stillroom.science.dosing.Vessel;
import stillroom.science.equilibrium.Component;
import stillroom.science.equilibrium.StrongIon;

/** Reads a titration from JSON. What cannot be read is refused with a sentence that names it. */
final class TitrationReader {
    private static final double USUAL_REPEATABILITY = 0.02;
    private static final double USUAL_STEP_GRAMS = 0.01;
    private static final double MOST_GRAMS = 1e9;

    private final SolutionReader solutions;

    TitrationReader(SolutionReader solutions) {
        this.solutions = solutions;
    }

    /** @throws IllegalArgumentException where something is missing, unknown or out of bounds */
    DosingTask read(JsonNode asked) {
        if (!asked.isObject()) {
            throw new IllegalArgumentException(
                    "a titration is an object with \"liquid\", \"correctors\", \"readings\"");
        }
        Map<String, Corrector> correctors = correctors(asked.path("correctors"));
        return new DosingTask(
                liquid(asked.path("liquid")),
                readings(asked.path("readings"), correctors),
                grams(asked, "bulkGrams", "the titration"),
                additions(asked.path("bulkAdditions"), correctors, "bulkAdditions"),
                corrector(asked.path("pour").asText(""), correctors, "\"pour\""),
                SolutionReader.number(asked, "targetPh", "the titration"),
                asked.has("halfBand") ? SolutionReader.number(asked, "halfBand", "the titration") : 0.2,
                instrument(asked));
    }

    private KnownChemistry liquid(JsonNode liquid) {
        List<Component> components = new ArrayList<>();
        List<StrongIon> ions = new ArrayList<>();
        liquid.path("components").forEach(part -> solutions.add(part, components, ions));
        double celsius = liquid.has("celsius") ? SolutionReader.number(liquid, "celsius", "the liquid") : 25;
        double water = SolutionReader.number(liquid, "waterMassFraction", "\"liquid\"");
        return new KnownChemistry(components, ions, water, celsius);
    }

    /** Correctors in their order; one may be a dilution of an earlier one. */
    private Map<String, Corrector> correctors(JsonNode asked) {
        Map<String, Corrector> correctors = new LinkedHashMap<>();
        for (Iterator<Map.Entry<String, JsonNode>> each = asked.fields(); each.hasNext(); ) {
            Map.Entry<String, JsonNode> one = each.next();
            correctors.put(one.getKey(), corrector(one.getKey(), one.getValue(), correctors));
        }
        return correctors;
    }

    private Corrector corrector(String name, JsonNode asked, Map<String, Corrector> before) {
        if (asked.has("dilutionOf")) {
            double share = SolutionReader.number(asked, "massFraction", "corrector \"" + name + "\"");
            return corrector(asked.path("dilutionOf").asText(""), before, "\"dilutionOf\"")
                    .dilutedTo(share);
        }
        List<Component> components = new ArrayList<>();
        List<StrongIon> ions = new ArrayList<>();
        asked.path("components").forEach(part -> solutions.add(part, components, ions));
        double water = SolutionReader.number(asked, "waterMassFraction", "corrector \"" + name + "\"");
        return new Corrector(name, components, ions, water);
    }

    private static Corrector corrector(String name, Map<String, Corrector> correctors, String where) {
        Corrector found = correctors.get(name);
        if (found == null) {
            throw new IllegalArgumentException(
                    where + " names the corrector \"" + name + "\", which \"correctors\" lacks");
        }
        return found;
    }

    private static List<PhReading> readings(JsonNode asked, Map<String, Corrector> correctors) {
        List<PhReading> readings = new ArrayList<>();
        for (JsonNode one : asked) {
            String of = "reading " + (readings.size() + 1);
            readings.add(new PhReading(
                    vessel(one.path("vessel").asText(""), of),
                    grams(one, "grams", of),
                    additions(one.path("additions"), correctors, of),
                    SolutionReader.number(one, "pH", of)));
        }
        return readings;
    }

    private static Vessel vessel(String said, String of) {
        return switch (said) {
            case "sample" -> Vessel.SAMPLE;
            case "bulk" -> Vessel.BULK;
            default -> throw new IllegalArgumentException("\"vessel\" of " + of + " is \"sample\" or \"bulk\"");
        };
    }

    private static List<Addition> additions(JsonNode asked, Map<String, Corrector> correctors, String of) {
        List<Addition> additions = new ArrayList<>();
        for (Iterator<Map.Entry<String, JsonNode>> each = asked.fields(); each.hasNext(); ) {
            Map.Entry<String, JsonNode> one = each.next();
            additions.add(new Addition(corrector(one.getKey(), correctors, of), grams(asked, one.getKey(), of)));
        }
        return additions;
    }

    private static double grams(JsonNode asked, String field, String of) {
        double grams = SolutionReader.number(asked, field, of);
        if (!(Math.abs(grams) <= MOST_GRAMS)) {
            throw new IllegalArgumentException(
                    "\"" + field + "\" of " + of + " is " + grams + " g, at most " + MOST_GRAMS);
        }
        return grams;
    }

    private static Instrument instrument(JsonNode asked) {
        double step = asked.has("balanceStepGrams")
                ? SolutionReader.number(asked, "balanceStepGrams", "the titration")
                : USUAL_STEP_GRAMS;
        if (asked.path("strips").asBoolean(false)) {
            return Instrument.strips(step);
        }
        return Instrument.meter(
                asked.has("repeatability")
                        ? SolutionReader.number(asked, "repeatability", "the titration")
                        : USUAL_REPEATABILITY,
                step);
    }
}
