package stillroom.desk.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import stillroom.science.dosing.Caution;
import stillroom.science.dosing.CurvePoint;
import stillroom.science.dosing.Dose;
import stillroom.science.dosing.Dosing;
import stillroom.science.dosing.DosingAnswer;
import stillroom.science.dosing.DosingTask;
import stillroom.science.dosing.PhReading;
import stillroom.science.dosing.SampleTitration;
import stillroom.science.equilibrium.RangeLimit;

/** Writes a dose as JSON. */
final class DoseWriter {
    private static final int CURVE_POINTS = 21;

    private DoseWriter() {}

    static ObjectNode write(DosingTask task) {
        ObjectNode answer = JsonNodeFactory.instance.objectNode();
        Dosing.next(task)
                .match(
                        proposed -> proposed(answer, task, proposed.dose()),
                        inBand -> inBand(answer, inBand),
                        refused -> refused(answer, task, refused));
        return answer;
    }

    private static ObjectNode proposed(ObjectNode answer, DosingTask task, Dose dose) {
        answer.put("answer", "pour");
        answer.put("grams", dose.grams());
        answer.put("stage", word(dose.stage()));
        answer.put("gramsToTarget", dose.gramsToTarget());
        answer.put("gramsToTargetLow", dose.lowGrams());
        answer.put("gramsToTargetHigh", dose.highGrams());
        answer.put("percentOfBulk", dose.percentOfBulk());
        state(answer.putObject("now"), dose.now());
        state(answer.putObject("after"), dose.after());
        answer.put("bufferCapacityMolPerKg", dose.bufferCapacityMolPerKg());
        ArrayNode exceeded = answer.putArray("exceeded");
        dose.exceeded().stream().map(RangeLimit::sentence).forEach(exceeded::add);
        ArrayNode cautions = answer.putArray("cautions");
        dose.cautions().stream().map(Caution::sentence).forEach(cautions::add);
        ArrayNode curve = answer.putArray("curve");
        Dosing.curve(task, 1.25 * dose.gramsToTarget(), CURVE_POINTS).forEach(point -> point(curve.addObject(), point));
        return answer;
    }

    private static String word(Dose.Stage stage) {
        return switch (stage) {
            case FIRST_PART -> "first-part";
            case REST -> "rest";
            case HALF_STEP -> "half-step";
        };
    }

    private static void state(ObjectNode into, Dose.State state) {
        into.put("pH", state.pH());
        into.put("pHLow", state.low());
        into.put("pHHigh", state.high());
        into.put("ionicStrengthMolPerKg", state.ionicStrengthMolPerKg());
    }

    private static void point(ObjectNode into, CurvePoint point) {
        into.put("grams", point.grams());
        into.put("pH", point.pH());
        into.put("pHLow", point.low());
        into.put("pHHigh", point.high());
    }

    private static ObjectNode inBand(ObjectNode answer, DosingAnswer.InBand inBand) {
        answer.put("answer", "in-band");
        answer.put("pH", inBand.pH());
        answer.put("pHLow", inBand.low());
        answer.put("pHHigh", inBand.high());
        return answer;
    }

    private static ObjectNode refused(ObjectNode answer, DosingTask task, DosingAnswer.Refused refused) {
        answer.put("answer", "refused");
        ArrayNode reasons = answer.putArray("reasons");
        refused.reasons().forEach(reason -> {
            ObjectNode one = reasons.addObject();
            one.put(
                    "kind",
                    reason.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
            one.put("sentence", reason.sentence());
        });
        prescription(answer, task, refused);
        return answer;
    }

    /** With nothing but the first pH, the answer says how to titrate. */
    private static void prescription(ObjectNode answer, DosingTask task, DosingAnswer.Refused refused) {
        List<PhReading> readings = task.readings();
        boolean onlyTooFew = refused.reasons().size() == 1 && readings.size() == 1;
        if (!onlyTooFew) {
            return;
        }
        SampleTitration.prescribe(
                        task.chemistry(),
                        readings.get(0).pH(),
                        task.targetPh(),
                        task.corrector(),
                        task.bulkGrams(),
                        task.instrument())
                .ifPresent(one -> {
                    ObjectNode said = answer.putObject("prescription");
                    said.put("sampleGrams", one.sampleGrams());
                    said.put("dilutionMassFraction", one.dilutionMassFraction());
                    said.put("firstGrams", one.firstGrams());
                    said.put("expectedGrams", one.expectedGrams());
                });
    }
}
