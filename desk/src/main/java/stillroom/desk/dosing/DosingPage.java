package stillroom.desk.dosing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.batches.BatchHead;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;
import stillroom.formulary.evaluation.Finding;

/**
 * Correcting a pH.
 *
 * @param path of the page
 * @param ask what was chosen, by field, for the hidden fields of forms
 * @param settings the form of the choices
 * @param typed the form that could not be taken
 * @param act which form that was; empty for none
 * @param general problems that belong to no field
 * @param expected pH to expect from what is in the vessel, never a bare number
 * @param meter what is to be said of the meter, empty for nothing
 * @param gap why nothing can be computed, empty when it can
 * @param now the pH of the bulk as it stands
 * @param notPrescribed why no sample can be prescribed, empty otherwise
 * @param refusals why no dose is given, in sentences
 * @param inBand the fitted pH where nothing is needed, empty otherwise
 */
public record DosingPage(
        Frame frame,
        BatchHead head,
        String path,
        Map<String, String> ask,
        Typed settings,
        Options options,
        Typed typed,
        String act,
        List<String> general,
        String requestId,
        String by,
        String target,
        String expected,
        String meter,
        String gap,
        String now,
        String forgotten,
        List<Row> readings,
        Optional<Prescribed> prescribed,
        String notPrescribed,
        Optional<Titrating> titrating,
        List<String> refusals,
        String inBand,
        Optional<Proposal> proposal,
        Optional<Overshoot> overshoot,
        Optional<TitrationChart> chart,
        Optional<Following> following,
        List<Before> before,
        List<String> cautions,
        Optional<Reserve> reserve) {
    public DosingPage {
        general = List.copyOf(general);
        readings = List.copyOf(readings);
        refusals = List.copyOf(refusals);
        before = List.copyOf(before);
        cautions = List.copyOf(cautions);
    }

    /** What there is to choose from. */
    public record Options(
            List<Choice> vessels,
            List<Choice> correctors,
            List<Choice> lots,
            List<Choice> balances,
            List<Choice> electrodes,
            String corrector) {}

    /**
     * One reading on the way.
     *
     * @param added what had been poured by then, in words
     * @param strike where it is struck
     * @param mark what speaks against it, empty for nothing
     */
    public record Row(String at, String where, String added, String pH, String mark, String strike) {}

    /**
     * How to titrate a sample.
     *
     * @param dilution what to weigh together, one sentence; empty where the corrector is poured as it is
     * @param corrector grams of corrector for the dilution
     * @param water grams of water for it
     */
    public record Prescribed(
            String sample,
            String percent,
            String dilution,
            String corrector,
            String water,
            String first,
            String expected) {}

    /** A sample that is being titrated. */
    public record Titrating(int entry, String says, String inIt, String next, String total) {}

    /**
     * A dose for the bulk.
     *
     * @param stage which part of the way, one sentence
     * @param all what is missing in all, with its interval
     * @param bench where it is weighed in
     */
    public record Proposal(
            String grams,
            String corrector,
            String stage,
            String all,
            String after,
            String percent,
            String capacity,
            List<String> exceeded,
            String bench) {}

    /** Too much was poured: what it costs to go back. */
    public record Overshoot(String says, String cost, boolean leave) {}

    /** What the dose does to the rest of the product. */
    public record Following(
            String at,
            String ionic,
            List<Finding> appeared,
            List<Finding> gone,
            List<Preserved> preserved,
            String gap) {}

    /** A preservative now and after. */
    public record Preserved(String name, String now, String after, String note) {}

    /** What an earlier batch of this product took. */
    public record Before(
            String batch,
            String path,
            String day,
            String corrector,
            String grams,
            String percent,
            String way,
            String pours) {}

    /** What would be reserved in the formula [%]. */
    public record Reserve(String expected, String low, String high, String says) {}
}
