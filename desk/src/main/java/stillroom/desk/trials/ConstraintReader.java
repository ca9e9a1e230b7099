package stillroom.desk.trials;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillroom.science.mixture.LinearConstraint;

/** Reads a limit on a weighted sum of fractions, in any of the ways in which one may be written (docs/commands.md). */
public final class ConstraintReader {
    private static final Pattern RELATION = Pattern.compile("<=|>=|==|=|≤|≥|<|>");
    private static final Pattern SUMMAND =
            Pattern.compile("([+-]?)\\s*(\\d*\\.?\\d*(?:[eE][+-]?\\d+)?)\\s*\\*?\\s*[xX]_?(\\d+)");
    private static final Map<String, String> RELATIONS =
            Map.of("<=", "le", "<", "le", "≤", "le", ">=", "ge", ">", "ge", "≥", "ge", "=", "eq", "==", "eq");

    private final int components;

    public ConstraintReader(int components) {
        this.components = components;
    }

    public LinearConstraint read(JsonNode one) {
        if (one.isTextual()) {
            return sentence(one.asText());
        }
        return one.isArray() ? row(one) : object(one);
    }

    /** Coefficients, then min and max. */
    private LinearConstraint row(JsonNode one) {
        if (one.size() != components + 2) {
            throw new IllegalArgumentException("a constraint written as a list has " + components
                    + " coefficients, then min and max (null for none), not " + one.size() + " entries");
        }
        List<Double> coefficients = new ArrayList<>();
        for (int i = 0; i < components; i++) {
            coefficients.add(number(one.get(i)));
        }
        return between(coefficients, one.get(components), one.get(components + 1));
    }

    private LinearConstraint object(JsonNode one) {
        List<Double> coefficients = coefficients(first(one, "coefficients", "coef", "coeffs", "a", "weights"));
        JsonNode relation = first(one, "op", "relation", "sense", "type", "direction");
        JsonNode value = first(one, "value", "rhs", "b", "bound");
        if (relation.isTextual()) {
            return related(coefficients, relation.asText().trim(), number(value));
        }
        JsonNode equal = first(one, "equals", "equal", "eq");
        if (equal.isNumber()) {
            return new LinearConstraint(coefficients, equal.asDouble(), equal.asDouble());
        }
        JsonNode min = first(one, "min", "lower", "ge", "lb");
        JsonNode max = first(one, "max", "upper", "le", "ub");
        if (!min.isNumber() && !max.isNumber()) {
            throw new IllegalArgumentException(
                    "a constraint needs \"min\" or \"max\" beside its \"coefficients\": " + one);
        }
        return between(coefficients, min, max);
    }

    private static LinearConstraint between(List<Double> coefficients, JsonNode min, JsonNode max) {
        return new LinearConstraint(
                coefficients,
                min.isNumber() ? min.asDouble() : Double.NEGATIVE_INFINITY,
                max.isNumber() ? max.asDouble() : Double.POSITIVE_INFINITY);
    }

    private static LinearConstraint related(List<Double> coefficients, String relation, double value) {
        String word = RELATIONS.getOrDefault(relation, relation.toLowerCase(java.util.Locale.ROOT));
        return switch (word) {
            case "le", "max", "leq" -> new LinearConstraint(coefficients, Double.NEGATIVE_INFINITY, value);
            case "ge", "min", "geq" -> new LinearConstraint(coefficients, value, Double.POSITIVE_INFINITY);
            case "eq" -> new LinearConstraint(coefficients, value, value);
            default -> throw new IllegalArgumentException("a constraint's relation is <=, >= or =, not " + relation);
        };
    }

    private List<Double> coefficients(JsonNode stated) {
        List<Double> coefficients = new ArrayList<>(Collections.nCopies(components, 0.0));
        if (stated.isObject()) {
            stated.fields()
                    .forEachRemaining(entry -> coefficients.set(index(entry.getKey()), number(entry.getValue())));
            return coefficients;
        }
        if (!stated.isArray() || stated.size() != components) {
            throw new IllegalArgumentException(
                    "a constraint needs \"coefficients\", one for each of the " + components + " components");
        }
        for (int i = 0; i < components; i++) {
            coefficients.set(i, number(stated.get(i)));
        }
        return coefficients;
    }

    private int index(String name) {
        String digits = name.replaceFirst("^[xX]_?", "");
        int index = digits.matches("\\d{1,3}") ? Integer.parseInt(digits) : 0;
        if (index < 1 || index > components) {
            throw new IllegalArgumentException("components are named x1 to x" + components + ", not " + name);
        }
        return index - 1;
    }

    /** Such as x1 + 2 x3 - x4 <= 0.5; the figure stands on the right. */
    public LinearConstraint sentence(String text) {
        Matcher relation = RELATION.matcher(text);
        if (!relation.find()) {
            throw new IllegalArgumentException(
                    "a constraint in words is like \"x1 + 2 x3 <= 0.5\", not \"" + text + "\"");
        }
        String left = text.substring(0, relation.start());
        List<Double> coefficients = new ArrayList<>(Collections.nCopies(components, 0.0));
        Matcher summand = SUMMAND.matcher(left);
        int read = 0;
        while (summand.find()) {
            double size = summand.group(2).isEmpty() ? 1 : Double.parseDouble(summand.group(2));
            int at = index(summand.group(3));
            coefficients.set(at, coefficients.get(at) + (summand.group(1).equals("-") ? -size : size));
            read += summand.end() - summand.start();
        }
        if (read == 0 || summand.replaceAll("").strip().length() > 0) {
            throw new IllegalArgumentException(
                    "cannot read \"" + left.strip() + "\" in the constraint \"" + text + "\"");
        }
        try {
            return related(
                    coefficients,
                    relation.group(),
                    Double.parseDouble(text.substring(relation.end()).strip()));
        } catch (NumberFormatException broken) {
            throw new IllegalArgumentException("the constraint \"" + text + "\" needs one figure on its right", broken);
        }
    }

    private static double number(JsonNode figure) {
        if (!figure.isNumber()) {
            throw new IllegalArgumentException("a constraint needs a number where it has " + figure);
        }
        return figure.asDouble();
    }

    private static JsonNode first(JsonNode object, String... names) {
        for (String name : names) {
            if (object.hasNonNull(name)) {
                return object.get(name);
            }
        }
        return object.path("");
    }
}
