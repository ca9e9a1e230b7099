package stillroom.science.dosing;

import java.util.ArrayList;
import java.util.List;

/** A liquid with everything that was poured into it. */
record Mixture(double liquidGrams, List<Addition> additions) {

    static Mixture of(PhReading reading) {
        return new Mixture(reading.liquidGrams(), reading.additions());
    }

    Mixture plus(Corrector corrector, double grams) {
        List<Addition> more = new ArrayList<>(additions);
        more.add(new Addition(corrector, grams));
        return new Mixture(liquidGrams, more);
    }
}
