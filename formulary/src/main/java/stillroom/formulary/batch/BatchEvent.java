package stillroom.formulary.batch;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.quantity.Grams;

/** Something that happened to a batch. What happened stays in the log; a mistake is struck by a later entry. */
public sealed interface BatchEvent {
    /** The batch was planned from a kept version; free-hand batches begin without this. */
    record Planned(Plan plan) implements BatchEvent {}

    /** Work at the bench began. */
    record Begun(String note) implements BatchEvent {}

    /**
     * A vessel was put to use. Its name is unique in the batch.
     *
     * @param clean how it was cleaned or sanitised, or the reason why it is used as it is
     */
    record VesselReady(String vessel, Optional<Grams> tare, Optional<Grams> capacity, String clean)
            implements BatchEvent {}

    /**
     * A weighing into a vessel; negative when material was taken back (to waste, never into the lot).
     *
     * @param lineId the line that it serves; none for corrections and free-hand work
     * @param lot none where the bottle was not booked; said so in the record
     * @param checkedBy who checked, or empty
     */
    record Poured(
            String vessel,
            Optional<String> lineId,
            String materialKey,
            Optional<String> lot,
            Grams mass,
            Purpose purpose,
            String balance,
            String checkedBy,
            String note)
            implements BatchEvent {}

    /** Why something was poured. */
    enum Purpose {
        LINE,
        CORRECTION_ACID,
        CORRECTION_BASE,
        CORRECTION_THICKENER,
        CORRECTION_WATER,
        CORRECTION_OTHER
    }

    /** A step of the procedure was done, or work outside it, with what was really set. */
    record StepDone(
            String vessel,
            Optional<String> stepId,
            String doing,
            Optional<Double> celsius,
            Optional<Double> minutes,
            String note)
            implements BatchEvent {}

    /** A timer was started; it runs until {@code until} wherever the program is. */
    record TimerStarted(String timer, String vessel, String label, Instant until) implements BatchEvent {}

    record TimerStopped(String timer, String note) implements BatchEvent {}

    /** All of one vessel went into another. */
    record Combined(String from, String into, Optional<Double> fromCelsius, Optional<Double> intoCelsius)
            implements BatchEvent {}

    /** The whole vessel was weighed, stirrer included; what is missing evaporated. */
    record VesselWeighed(String vessel, Grams gross) implements BatchEvent {}

    /** Something was taken out and does not come back. */
    record Sampled(String vessel, Grams mass, String what) implements BatchEvent {}

    /**
     * Something was read.
     *
     * @param value the figure, in {@code unit}; none for appearance and odour
     * @param words what was seen, may be empty
     * @param how conditions, such as "neat" or "10 % in water", sample temperature, instrument, spindle, speed
     */
    record ReadingTaken(
            ReadingKind kind, String vessel, Optional<Double> value, String unit, String words, Map<String, String> how)
            implements BatchEvent {
        public ReadingTaken {
            how = Map.copyOf(how);
        }
    }

    /** Left to stand; comes back by itself when due. */
    record RestBegun(Instant due, String lookFor) implements BatchEvent {}

    record RestEnded(String note) implements BatchEvent {}

    /**
     * Containers were filled.
     *
     * @param total what went into them together [g]
     */
    record Filled(String pack, int containers, Grams total, Optional<Grams> retained, String note)
            implements BatchEvent {}

    record Noted(String text) implements BatchEvent {}

    /** An earlier entry is not true; it stays in the log, struck, with the reason. */
    record Struck(int entry, String reason) implements BatchEvent {}

    /**
     * Released or rejected by a named person.
     *
     * @param overruled gates that were not met, each with the reason for going on all the same
     */
    record Decided(Decision decision, String by, String reason, List<String> overruled) implements BatchEvent {
        public Decided {
            overruled = List.copyOf(overruled);
        }
    }

    enum Decision {
        RELEASED,
        REJECTED
    }
}
