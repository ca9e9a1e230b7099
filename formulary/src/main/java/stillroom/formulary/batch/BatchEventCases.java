package stillroom.formulary.batch;

/**
 * One function per kind of event, so that a new kind fails to compile wherever it is not thought of.
 *
 * @param <R> what is made of an event
 */
public interface BatchEventCases<R> {
    R planned(BatchEvent.Planned event);

    R begun(BatchEvent.Begun event);

    R vesselReady(BatchEvent.VesselReady event);

    R poured(BatchEvent.Poured event);

    R readAgain(BatchEvent.ReadAgain event);

    R lineAccepted(BatchEvent.LineAccepted event);

    R replanned(BatchEvent.Replanned event);

    R lotsNamed(BatchEvent.LotsNamed event);

    R phasesGiven(BatchEvent.PhasesGiven event);

    R stepDone(BatchEvent.StepDone event);

    R timerStarted(BatchEvent.TimerStarted event);

    R timerStopped(BatchEvent.TimerStopped event);

    R combined(BatchEvent.Combined event);

    R vesselWeighed(BatchEvent.VesselWeighed event);

    R sampled(BatchEvent.Sampled event);

    R readingTaken(BatchEvent.ReadingTaken event);

    R titrationBegun(BatchEvent.TitrationBegun event);

    R titrationRead(BatchEvent.TitrationRead event);

    R restBegun(BatchEvent.RestBegun event);

    R restEnded(BatchEvent.RestEnded event);

    R filled(BatchEvent.Filled event);

    R handedOver(BatchEvent.HandedOver event);

    R bulkReceived(BatchEvent.BulkReceived event);

    R pictured(BatchEvent.Pictured event);

    R noted(BatchEvent.Noted event);

    R struck(BatchEvent.Struck event);

    R decided(BatchEvent.Decided event);

    R concerned(BatchEvent.Concerned event);
}
