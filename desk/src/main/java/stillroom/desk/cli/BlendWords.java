package stillroom.desk.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import stillroom.science.blend.Blend;
import stillroom.science.blend.Explanation;
import stillroom.science.blend.Requirement;

/** Requirements and their reliefs as JSON, each with a sentence. */
final class BlendWords {
    private BlendWords() {}

    static void write(ObjectNode into, Requirement requirement, Blend blend) {
        head(into, requirement, blend);
        into.put("bound", bound(requirement, blend));
        into.put("sentence", sentence(requirement, blend, bound(requirement, blend)));
    }

    static void write(ObjectNode into, Explanation.Relief relief, Blend blend) {
        head(into, relief.requirement(), blend);
        into.put("bound", bound(relief.requirement(), blend));
        into.put("to", relief.to());
        into.put("sentence", sentence(relief.requirement(), blend, relief.to()));
    }

    private static void head(ObjectNode into, Requirement requirement, Blend blend) {
        into.put("requirement", kind(requirement.kind()));
        into.put("of", name(requirement, blend));
    }

    private static String kind(Requirement.Kind kind) {
        return switch (kind) {
            case LEAST_DOSE -> "material-min";
            case PRESENCE -> "material-present";
            case MOST -> "material-max";
            case USE_LIMIT -> "at-most";
            case LIMIT_MIN -> "limit-min";
            case LIMIT_MAX -> "limit-max";
        };
    }

    private static String name(Requirement requirement, Blend blend) {
        return switch (requirement.kind()) {
            case LEAST_DOSE, PRESENCE, MOST ->
                blend.ingredients().get(requirement.of()).name();
            case USE_LIMIT -> blend.useLimits().get(requirement.of()).name();
            case LIMIT_MIN, LIMIT_MAX -> blend.limits().get(requirement.of()).name();
        };
    }

    private static double bound(Requirement requirement, Blend blend) {
        return switch (requirement.kind()) {
            case LEAST_DOSE, PRESENCE ->
                blend.ingredients().get(requirement.of()).leastIfUsed();
            case MOST -> blend.ingredients().get(requirement.of()).most();
            case USE_LIMIT -> blend.useLimits().get(requirement.of()).atMost();
            case LIMIT_MIN -> blend.limits().get(requirement.of()).min();
            case LIMIT_MAX -> blend.limits().get(requirement.of()).max();
        };
    }

    private static String sentence(Requirement requirement, Blend blend, double bound) {
        String name = name(requirement, blend);
        return switch (requirement.kind()) {
            case LEAST_DOSE -> name + ", where used, at least " + bound;
            case PRESENCE -> name + " must be in it";
            case MOST -> name + " at most " + bound;
            case USE_LIMIT -> "at most " + (int) bound + " materials";
            case LIMIT_MIN -> name + " at least " + bound;
            case LIMIT_MAX -> name + " at most " + bound;
        };
    }
}
