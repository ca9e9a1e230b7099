package stillroom.desk.trials;

import java.util.Optional;
import stillroom.desk.shell.Input;
import stillroom.science.curve.Conditions;
import stillroom.science.curve.Conditions.Geometry;

/** How readings were taken, as a form says it. */
final class ConditionsForm {
    private ConditionsForm() {}

    /** Refused where something is missing without which readings cannot be compared. */
    static Optional<Conditions> read(Input input) {
        String instrument = input.required("instrument", "The instrument");
        Optional<Geometry> geometry = input.choice("geometry", "The geometry", Geometry.class);
        Optional<Double> celsius = input.number("celsius", "The temperature of the samples", "-10", "120");
        Optional<Double> age = input.number("age", "The age of the samples", "0", "100000");
        missing(input, "geometry", "The geometry", geometry);
        missing(input, "celsius", "The temperature of the samples", celsius);
        missing(input, "age", "The age of the samples", age);
        if (geometry.isPresent() && !geometry.get().definedShearRate()) {
            input.required("spindle", "The spindle or cup");
        }
        if (geometry.filter(one -> one == Geometry.DISC_SPINDLE).isPresent()) {
            input.required("speed", "The speed");
        }
        return input.isSound()
                ? Optional.of(new Conditions(
                        instrument,
                        geometry.orElseThrow(),
                        input.text("spindle"),
                        input.text("speed"),
                        input.text("container"),
                        celsius.orElseThrow(),
                        age.orElseThrow()))
                : Optional.empty();
    }

    private static void missing(Input input, String field, String what, Optional<?> read) {
        if (read.isEmpty() && !input.hasProblem(field)) {
            input.refuse(field, what + " is missing.");
        }
    }

    /** In one line. */
    static String words(Conditions one) {
        StringBuilder words = new StringBuilder(one.instrument() + ", " + CurvePage.words(one.geometry()));
        words.append(one.spindle().isEmpty() ? "" : ", " + one.spindle());
        words.append(one.speed().isEmpty() ? "" : ", " + one.speed() + " rpm");
        words.append(one.container().isEmpty() ? "" : ", " + one.container());
        return words + ", " + TrialPage.plain(one.celsius()) + " °C, " + TrialPage.plain(one.sampleAgeHours())
                + " h old";
    }
}
