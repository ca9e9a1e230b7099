package stillroom.desk.cli;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stillroom.science.blend.Blend;
import stillroom.science.blend.Cost;
import stillroom.science.blend.Ingredient;
import stillroom.science.blend.Limit;
import stillroom.science.blend.UseLimit;

/** Reads a blending problem from JSON. What cannot be read is refused with a sentence that names it. */
final class BlendReader {
    private final JsonNode materials;
    private final JsonNode goal;
    private final List<String> notes = new ArrayList<>();

    private BlendReader(JsonNode asked) {
        this.materials = asked.path("materials");
        this.goal = asked.path("goal");
    }

    /** @throws IllegalArgumentException where something is missing, unknown or out of bounds */
    static BlendTask read(JsonNode asked, double usualSeconds) {
        if (!asked.isObject()
                || !asked.path("materials").isArray()
                || asked.path("materials").isEmpty()) {
            throw new IllegalArgumentException("a problem is an object with a list of \"materials\" and of \"limits\"");
        }
        double seconds =
                asked.has("timeLimitSeconds") ? number(asked, "timeLimitSeconds", "the problem", 0) : usualSeconds;
        if (!(seconds > 0)) {
            throw new IllegalArgumentException("\"timeLimitSeconds\" must be above 0");
        }
        BlendReader reader = new BlendReader(asked);
        Blend blend = new Blend(reader.ingredients(), reader.limits(asked.path("limits")), reader.uses(asked));
        return new BlendTask(blend, reader.costs(), seconds, reader.notes);
    }

    private List<Ingredient> ingredients() {
        checkGoal();
        List<Ingredient> ingredients = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (JsonNode material : materials) {
            String name = material.path("name").asText("");
            if (name.isBlank() || !names.add(name)) {
                throw new IllegalArgumentException(
                        "each material needs a \"name\" of its own; found \"" + name + "\" again or empty");
            }
            ingredients.add(ingredient(material, name));
        }
        return ingredients;
    }

    private Ingredient ingredient(JsonNode material, String name) {
        double most = number(material, "max", name, 1);
        double leastIfUsed = number(material, "minIfUsed", name, 0);
        double least = number(material, "min", name, 0);
        boolean required = least > 0;
        double bottom = Math.max(least, leastIfUsed);
        if (bottom > most && !required && leastIfUsed <= 1) {
            notes.add(name + " cannot be used: its least dose " + leastIfUsed + " is above its most " + most);
            return new Ingredient(name, 0, 0, false, cost(material, name));
        }
        return new Ingredient(name, bottom, most, required, cost(material, name));
    }

    private Cost cost(JsonNode material, String name) {
        double perFraction = weight("cost", goal.isObject() ? 0 : 1) * number(material, "cost", name, 0);
        for (Map.Entry<String, JsonNode> wish : goal.path("properties").properties()) {
            perFraction += wish.getValue().asDouble() * property(material, wish.getKey());
        }
        return new Cost(perFraction, weight("used", 0), weight("change", 0), number(material, "now", name, 0));
    }

    private void checkGoal() {
        Set<String> known = Set.of("cost", "used", "change", "properties");
        for (Map.Entry<String, JsonNode> part : goal.properties()) {
            if (!known.contains(part.getKey())) {
                throw new IllegalArgumentException(
                        "\"goal\" knows cost, used, change and properties, not \"" + part.getKey() + "\"");
            }
        }
        for (Map.Entry<String, JsonNode> wish : goal.path("properties").properties()) {
            if (!wish.getValue().isNumber()) {
                throw new IllegalArgumentException(
                        "the weight of property \"" + wish.getKey() + "\" in \"goal\" must be a number");
            }
            known(wish.getKey());
        }
    }

    private double weight(String part, double usual) {
        return number(goal, part, "\"goal\"", usual);
    }

    private List<Double> costs() {
        List<Double> costs = new ArrayList<>();
        materials.forEach(material -> costs.add(number(material, "cost", "a material", 0)));
        return costs;
    }

    private List<Limit> limits(JsonNode asked) {
        List<Limit> limits = new ArrayList<>();
        for (JsonNode limit : asked) {
            String name = limit.path("property").asText("");
            known(name);
            double min = number(limit, "min", "the limit of " + name, Double.NEGATIVE_INFINITY);
            double max = number(limit, "max", "the limit of " + name, Double.POSITIVE_INFINITY);
            List<Double> values = new ArrayList<>();
            materials.forEach(material -> values.add(property(material, name)));
            limits.add(new Limit(name, values, min, max));
        }
        return limits;
    }

    private void known(String property) {
        for (JsonNode material : materials) {
            if (material.path("properties").has(property) || (property.equals("cost") && material.has("cost"))) {
                return;
            }
        }
        throw new IllegalArgumentException("no material has the property \"" + property + "\"");
    }

    /** A property that a material does not state is 0; the cost may be limited like a property. */
    private static double property(JsonNode material, String property) {
        if (property.equals("cost") && !material.path("properties").has("cost")) {
            return number(material, "cost", "a material", 0);
        }
        return number(
                material.path("properties"), property, material.path("name").asText(), 0);
    }

    private List<UseLimit> uses(JsonNode asked) {
        if (!asked.has("atMost")) {
            return List.of();
        }
        if (!asked.get("atMost").isInt() || asked.get("atMost").asInt() < 1) {
            throw new IllegalArgumentException("\"atMost\" must be a whole number above 0");
        }
        Set<Integer> all = IntStream.range(0, materials.size()).boxed().collect(Collectors.toSet());
        return List.of(new UseLimit("atMost", all, asked.get("atMost").asInt()));
    }

    private static double number(JsonNode part, String field, String of, double usual) {
        JsonNode value = part.path(field);
        if (value.isMissingNode() || value.isNull()) {
            return usual;
        }
        if (!value.isNumber() || !Double.isFinite(value.asDouble())) {
            throw new IllegalArgumentException("\"" + field + "\" of " + of + " must be a number");
        }
        return value.asDouble();
    }
}
