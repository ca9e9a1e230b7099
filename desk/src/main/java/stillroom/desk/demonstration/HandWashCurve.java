package stillroom.desk.demonstration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.trial.ViscosityCurve;
import stillroom.science.curve.Conditions;

/** The invented salt curve of the hand wash, with readings on a warm day that do not belong to it. */
final class HandWashCurve {
    private static final double[] DOSES = {0.4, 0.8, 1.2, 1.6, 2.0, 2.4, 2.8};
    private static final double[] READ = {420, 1150, 2620, 4480, 5710, 5350, 3680};
    private static final double[] WARM = {180, 510, 1190, 2050, 2640};

    private HandWashCurve() {}

    static void write(Desk desk, FormulaVersion base) {
        ViscosityCurve curve = new ViscosityCurve(
                "v0001",
                base.productId(),
                ViscosityCurve.Against.DOSE,
                "Salt in the hand wash",
                0.5,
                Optional.of(3000.0),
                List.of(series(25, READ), series(34, WARM)));
        desk.ledger().drawer("viscosity-curve", ViscosityCurve.class).write(curve.key(), curve);
    }

    private static ViscosityCurve.Series series(double celsius, double[] read) {
        List<ViscosityCurve.Reading> readings = new ArrayList<>();
        for (int i = 0; i < read.length; i++) {
            readings.add(new ViscosityCurve.Reading(DOSES[i], read[i]));
        }
        Conditions conditions = new Conditions(
                "rotational viscometer", Conditions.Geometry.DISC_SPINDLE, "R4", "20", "beaker 250 ml", celsius, 24);
        return new ViscosityCurve.Series(conditions, readings);
    }
}
