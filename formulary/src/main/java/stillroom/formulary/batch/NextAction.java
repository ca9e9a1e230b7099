package stillroom.formulary.batch;

import java.time.Instant;
import java.util.Optional;
import stillroom.formulary.formula.Step;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Grams;

/** Something that is still to be done. The person may always do another thing first. */
public sealed interface NextAction {
    /** A phase has no vessel yet. */
    record ReadyVessel(String phaseId, String phaseName) implements NextAction {}

    /** A line is short of its target by {@code open} [g]. */
    record Weigh(PlannedLine line, Grams poured, Grams open) implements NextAction {}

    /** A line is over its target beyond the tolerance by {@code over} [g]: take back, mend or accept. */
    record SettleOver(PlannedLine line, Grams poured, Grams over) implements NextAction {}

    record DoStep(String phaseId, Step step) implements NextAction {}

    /**
     * A line is added until the reading is right; the target is only expected.
     *
     * @param unread whether some of it is in that nothing was read after
     */
    record AddToReading(PlannedLine line, Grams poured, boolean unread) implements NextAction {}

    /**
     * The pH as last read lies outside the product's band.
     *
     * @param line the line that is added up to the pH, where the formula has one
     */
    record Correct(String vessel, PhStanding standing, Optional<PlannedLine> line) implements NextAction {}

    /** An acid or a base went in since the pH was read. */
    record ReadPh(String vessel) implements NextAction {}

    /** Another vessel is not finished: an earlier phase stands there, or this one goes into it later. */
    record WaitFor(String vessel) implements NextAction {}

    /** More of a phase was made than is used: so much of it is thrown away before it goes on [g]. */
    record TakeOut(String phaseId, String phaseName, Grams mass) implements NextAction {}

    /**
     * One vessel goes into another.
     *
     * @param advised whether the temperatures as logged speak for it
     * @param why what speaks for or against, one sentence
     */
    record Combine(String from, String into, boolean advised, String why) implements NextAction {}

    /** The batch rests; look again when due. */
    record LookAgain(Instant due, String lookFor) implements NextAction {}

    /** All is in and the pH lies in its band: it may have moved by tomorrow. Common practice, no source. */
    record LetRest(String vessel) implements NextAction {}

    /** All lines and steps are done and {@code net} is left to fill [g]. */
    record Fill(String vessel, Grams net) implements NextAction {}

    /** Filled: release or reject. */
    record Decide() implements NextAction {}
}
