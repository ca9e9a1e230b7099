package stillroom.formulary.formula;

import java.util.Optional;

/**
 * One step of the procedure of a phase.
 *
 * @param doing what to do, one sentence
 * @param celsius target temperature [degrees Celsius]
 * @param speed stirring in words or rpm, may be empty
 * @param minutes how long; timed steps are measured again at another scale, never scaled
 * @param seeIt the criterion that one can see ("no lumps, clear"), may be empty
 * @param caution for the person, may be empty
 */
public record Step(
        String id,
        String doing,
        Optional<Double> celsius,
        String speed,
        Optional<Double> minutes,
        String seeIt,
        String caution) {}
