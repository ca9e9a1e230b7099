package stillroom.formulary.concern;

/**
 * One function per kind of concern, so that a new kind fails to compile wherever it is not thought of.
 *
 * @param <R> what is made of a concern
 */
public interface ConcernCases<R> {
    R stopped(Concern.Stopped concern);

    R goneOn(Concern.GoneOn concern);

    R explained(Concern.Explained concern);

    R moved(Concern.Moved concern);

    R unitsCounted(Concern.UnitsCounted concern);

    R complained(Concern.Complained concern);

    R reacted(Concern.Reacted concern);

    R sampleKept(Concern.SampleKept concern);

    R fillChecked(Concern.FillChecked concern);

    R attached(Concern.Attached concern);

    R covered(Concern.Covered concern);
}
