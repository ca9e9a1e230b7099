package stillroom.desk.workshop;

import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/**
 * The pH meters and their calibrations.
 *
 * @param calibrate the form of a new calibration
 * @param add the form of a meter
 * @param buffers names of the buffers whose tables are on record, and another one; {@code thirds} with none before them
 */
public record MeterPage(
        Frame frame,
        List<MeterRow> meters,
        List<Choice> names,
        List<Choice> buffers,
        List<Choice> thirds,
        Typed calibrate,
        Typed add,
        List<CalibrationRow> calibrations) {
    public MeterPage {
        meters = List.copyOf(meters);
        names = List.copyOf(names);
        buffers = List.copyOf(buffers);
        thirds = List.copyOf(thirds);
        calibrations = List.copyOf(calibrations);
    }

    /**
     * A meter as it stands now.
     *
     * @param standing one sentence
     * @param notBracketed products whose target lies outside the buffers of its newest calibration
     */
    public record MeterRow(String name, String facts, boolean sound, String standing, List<String> notBracketed) {}

    /** One calibration; {@code faults} is empty where it holds. */
    public record CalibrationRow(
            String at, String meter, String buffers, String celsius, String shown, List<String> faults, String by) {}
}
