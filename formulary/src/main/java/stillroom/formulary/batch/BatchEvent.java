package stillroom.formulary.batch;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.concern.Concern;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;

/** Something that happened to a batch. What happened stays in the log; a mistake is struck by a later entry. */
public sealed interface BatchEvent {
    /** The answer of the one case that this event is. */
    <R> R match(BatchEventCases<R> cases);

    /** The batch was planned from a kept version; free-hand batches begin without this. */
    record Planned(Plan plan) implements BatchEvent {
        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.planned(this);
        }
    }

    /** Work at the bench began. */
    record Begun(String note) implements BatchEvent {
        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.begun(this);
        }
    }

    /**
     * A vessel was put to use. Its name is unique in the batch.
     *
     * @param phases ids of the phases meant for it; empty where that shows only by what is poured
     * @param clean how it was cleaned or sanitised
     * @param asItIs why it is used though it is not sanitised; none where it is
     */
    record VesselReady(
            String vessel,
            Optional<Grams> tare,
            Optional<Grams> capacity,
            String clean,
            List<String> phases,
            Optional<String> asItIs)
            implements BatchEvent {
        public VesselReady {
            phases = List.copyOf(phases);
        }

        public VesselReady(
                String vessel, Optional<Grams> tare, Optional<Grams> capacity, String clean, List<String> phases) {
            this(vessel, tare, capacity, clean, phases, Optional.empty());
        }

        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.vesselReady(this);
        }
    }

    /**
     * A weighing into a vessel; negative when material was taken back (to waste, never into the lot).
     *
     * @param lineId the line that it serves; none for corrections and free-hand work
     * @param lot none where the bottle was not booked; said so in the record
     * @param checkedBy who checked, or empty
     * @param scanned whether the code on the bottle was read by a scanner or camera, or typed from it, before the pour
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
            String note,
            boolean scanned)
            implements BatchEvent {
        public Poured(
                String vessel,
                Optional<String> lineId,
                String materialKey,
                Optional<String> lot,
                Grams mass,
                Purpose purpose,
                String balance,
                String checkedBy,
                String note) {
            this(vessel, lineId, materialKey, lot, mass, purpose, balance, checkedBy, note, false);
        }

        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.poured(this);
        }
    }

    /**
     * The weight of an earlier entry was read again. By another person it is checked; by the same one, a minute or more
     * later, self-checked, and printed so.
     *
     * @param entry number of the weighing
     * @param shown what the balance or the written figure showed at the second look
     */
    record ReadAgain(int entry, Grams shown) implements BatchEvent {
        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.readAgain(this);
        }
    }

    /** A line stays as it is, short of or beyond its target, and why: the deviation is explained. */
    record LineAccepted(String lineId, String reason) implements BatchEvent {
        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.lineAccepted(this);
        }
    }

    /**
     * After something was poured too much, the batch goes on with other targets.
     *
     * @param plan what holds from now on
     * @param surplus what of a phase is to be thrown away before it is used; may be empty
     */
    record Replanned(Plan plan, String reason, List<Surplus> surplus) implements BatchEvent {
        public Replanned {
            surplus = List.copyOf(surplus);
        }

        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.replanned(this);
        }
    }

    /** So much of a phase is made and not used [g]. */
    record Surplus(String phaseId, Grams mass) {
        /** What stands in the log when it is thrown away. */
        public String what() {
            return "surplus of phase " + phaseId;
        }
    }

    /**
     * From which lots a weighing really came, said afterwards: the bottle ran out half way, or was not booked.
     *
     * @param entry number of the weighing
     * @param parts together the mass of the weighing
     * @param reason why they are named now, and why doubtful ones were used
     */
    record LotsNamed(int entry, List<LotPart> parts, String reason) implements BatchEvent {
        public LotsNamed {
            parts = List.copyOf(parts);
        }

        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.lotsNamed(this);
        }
    }

    /** So much of a weighing came from that lot [g]. */
    record LotPart(String lot, Grams mass) {}

    /** Phases that are worked in a vessel which is in use already. */
    record PhasesGiven(String vessel, List<String> phases) implements BatchEvent {
        public PhasesGiven {
            phases = List.copyOf(phases);
        }

        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.phasesGiven(this);
        }
    }

    /** Why something was poured. */
    enum Purpose {
        LINE,
        CORRECTION_ACID,
        CORRECTION_BASE,
        CORRECTION_THICKENER,
        CORRECTION_WATER,
        CORRECTION_OTHER,
        /** Nobody wanted it in: the wrong bottle. */
        MISTAKE
    }

    /** A step of the procedure was done, or work outside it, with what was really set. */
    record StepDone(
            String vessel,
            Optional<String> stepId,
            String doing,
            Optional<Double> celsius,
            Optional<Double> minutes,
            String note)
            implements BatchEvent {
        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.stepDone(this);
        }
    }

    /** A timer was started; it runs until {@code until} wherever the program is. */
    record TimerStarted(String timer, String vessel, String label, Instant until) implements BatchEvent {
        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.timerStarted(this);
        }
    }

    record TimerStopped(String timer, String note) implements BatchEvent {
        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.timerStopped(this);
        }
    }

    /** All of one vessel went into another. */
    record Combined(String from, String into, Optional<Double> fromCelsius, Optional<Double> intoCelsius)
            implements BatchEvent {
        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.combined(this);
        }
    }

    /** The whole vessel was weighed, stirrer included; what is missing evaporated. */
    record VesselWeighed(String vessel, Grams gross) implements BatchEvent {
        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.vesselWeighed(this);
        }
    }

    /** Something was taken out and does not come back. */
    record Sampled(String vessel, Grams mass, String what) implements BatchEvent {
        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.sampled(this);
        }
    }

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

        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.readingTaken(this);
        }
    }

    /**
     * A weighed sample was taken out to be titrated with a weighed dilution of a corrector; it is thrown away afterwards.
     *
     * @param corrector key of the material that was diluted
     * @param lot none where the bottle was not booked
     * @param dilution share of the corrector in the dilution, as weighed; 100 where it is poured as it is
     * @param how conditions, such as the instrument, the electrode, the balance
     */
    record TitrationBegun(
            String vessel,
            Grams sample,
            String corrector,
            Optional<String> lot,
            Percent dilution,
            Optional<Double> celsius,
            Map<String, String> how)
            implements BatchEvent {
        public TitrationBegun {
            how = Map.copyOf(how);
        }

        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.titrationBegun(this);
        }
    }

    /**
     * The pH of a sample that is titrated; it is no reading of the product, save the first, before any addition.
     *
     * @param titration number of the entry with which the titration began
     * @param added dilution poured into the sample so far, all together [g]
     */
    record TitrationRead(int titration, Grams added, double pH) implements BatchEvent {
        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.titrationRead(this);
        }
    }

    /** Left to stand; comes back by itself when due. */
    record RestBegun(Instant due, String lookFor) implements BatchEvent {
        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.restBegun(this);
        }
    }

    record RestEnded(String note) implements BatchEvent {
        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.restEnded(this);
        }
    }

    /**
     * Containers were filled.
     *
     * @param vessel from which they were filled
     * @param total what went into them together [g]
     * @param retained what was kept back besides as retained samples [g]
     * @param packLot code of the lot of containers; none where it was not booked
     */
    record Filled(
            String vessel,
            String pack,
            int containers,
            Grams total,
            Optional<Grams> retained,
            String note,
            Optional<String> packLot)
            implements BatchEvent {
        public Filled(String vessel, String pack, int containers, Grams total, Optional<Grams> retained, String note) {
            this(vessel, pack, containers, total, retained, note, Optional.empty());
        }

        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.filled(this);
        }
    }

    /** A part of the bulk was handed over to another batch. */
    record HandedOver(String vessel, Grams mass, String toBatch) implements BatchEvent {
        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.handedOver(this);
        }
    }

    /** Bulk of another batch came in, with all that is known to be in it. */
    record BulkReceived(String vessel, String fromBatch, List<BulkPart> parts, Grams waterLost) implements BatchEvent {
        public BulkReceived {
            parts = List.copyOf(parts);
        }

        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.bulkReceived(this);
        }
    }

    /** One material of a bulk, as added [g]. */
    record BulkPart(String materialKey, Optional<String> lot, Optional<String> lineId, Grams mass) {}

    /**
     * A photograph was taken.
     *
     * @param attachment SHA-256 of the picture as it is kept, in hexadecimal; so the log's chain covers it too
     * @param when of the making: "before", "after", "next day", in the maker's words
     * @param words what is to be seen, may be empty
     */
    record Pictured(String attachment, String when, String words) implements BatchEvent {
        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.pictured(this);
        }
    }

    /** Something worth writing down. */
    record Noted(String text) implements BatchEvent {
        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.noted(this);
        }
    }

    /** An earlier entry is not true; it stays in the log, struck, with the reason. */
    record Struck(int entry, String reason) implements BatchEvent {
        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.struck(this);
        }
    }

    /**
     * Released or rejected by a named person.
     *
     * @param overruled gates that were not met, each with the reason for going on all the same
     */
    record Decided(Decision decision, String by, String reason, List<String> overruled) implements BatchEvent {
        public Decided {
            overruled = List.copyOf(overruled);
        }

        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.decided(this);
        }
    }

    enum Decision {
        RELEASED,
        REJECTED,
        /** Thrown away before it was decided on. */
        SCRAPPED,
        /** Called back after it was released. */
        RECALLED
    }

    /** Something about the batch as a whole; it may come after the decision. */
    record Concerned(Concern concern) implements BatchEvent {
        @Override
        public <R> R match(BatchEventCases<R> cases) {
            return cases.concerned(this);
        }
    }
}
