package stillroom.desk.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import stillroom.science.equilibrium.Equilibrium;
import stillroom.science.equilibrium.ModelUncertainty;
import stillroom.science.equilibrium.RangeLimit;
import stillroom.science.equilibrium.Species;

/** Writes an equilibrium as JSON. */
final class EquilibriumWriter {
    private EquilibriumWriter() {}

    static ObjectNode write(Equilibrium solved) {
        ObjectNode answer = JsonNodeFactory.instance.objectNode();
        double half = ModelUncertainty.halfWidth(solved.ionicStrengthMolPerKg());
        answer.put("pH", solved.pH());
        answer.put("pHLow", solved.pH() - half);
        answer.put("pHHigh", solved.pH() + half);
        answer.put("ionicStrengthMolPerKg", solved.ionicStrengthMolPerKg());
        answer.put("bufferCapacityMolPerKg", solved.bufferCapacityMolPerKg());
        ArrayNode species = answer.putArray("species");
        solved.species().forEach(form -> add(species, form));
        ObjectNode validity = answer.putObject("validity");
        validity.put("inRange", solved.inRange());
        ArrayNode exceeded = validity.putArray("exceeded");
        solved.exceeded().stream().map(RangeLimit::sentence).forEach(exceeded::add);
        validity.put("converged", solved.converged());
        validity.put("chargeResidualMolPerKg", solved.chargeResidualMolPerKg());
        validity.put("iterations", solved.iterations());
        return answer;
    }

    private static void add(ArrayNode species, Species form) {
        ObjectNode entry = species.addObject();
        entry.put("name", form.name());
        entry.put("protonsLost", form.protonsLost());
        entry.put("charge", form.charge());
        entry.put("molPerKg", form.molPerKg());
        entry.put("activityCoefficient", form.activityCoefficient());
    }
}
