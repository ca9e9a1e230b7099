package stillroom.desk.batches.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;
import stillroom.desk.trials.Studies.Study;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.PlannedLine.Advice;
import stillroom.formulary.quantity.Grams;

/**
 * The page that plans a batch.
 *
 * @param typed the size form as typed
 * @param owned the workshop's balances; empty where none is on file and one is asked for here
 * @param chosen names of the balances that the plan uses
 * @param grams the plan, where one can be made
 * @param instead why there is none, empty where there is one
 * @param choices how single lines may be weighed
 * @param query the size form as part of an address
 * @param code proposed or typed batch code
 * @param run of trials that the version is
 * @param who proposed or typed name of who plans
 * @param clash what stands in the way of beginning, empty for nothing
 */
public record PlanPage(
        Frame frame,
        Product product,
        FormulaVersion version,
        Optional<Study> run,
        Typed typed,
        boolean byContainers,
        List<Balance> owned,
        Set<String> chosen,
        Optional<PlanGrams> grams,
        String instead,
        List<WeighedAs.LineChoice> choices,
        String query,
        String code,
        String who,
        String clash) {
    /** Names of the size form's fields, sent along when the batch is begun. */
    public static final List<String> SIZE_FIELDS = List.of(
            "by",
            "mass",
            "containers",
            "fill",
            "fillUnit",
            "density",
            "overfill",
            "retained",
            "phSample",
            "labSample",
            "loss",
            "step",
            "maximum",
            "blend",
            "lessLine",
            "less");

    public PlanPage {
        owned = List.copyOf(owned);
        choices = List.copyOf(choices);
        chosen = Set.copyOf(chosen);
    }

    /** Whether a field goes along when the batch is begun. */
    static boolean carried(String field) {
        return SIZE_FIELDS.contains(field) || field.startsWith(WeighedAs.PREMIX) || field.startsWith(WeighedAs.ACTIVE);
    }

    /** Fields of single lines that go along, as typed. */
    public List<WeighedAs.LineChoice> chosenLines() {
        return choices.stream().filter(choice -> !choice.value().isEmpty()).toList();
    }

    public String path() {
        return "/products/" + product.id() + "/versions/" + version.number();
    }

    public String value(String field, String otherwise) {
        return typed.value(field, otherwise);
    }

    public PlanPage withClash(String sentence) {
        return new PlanPage(
                frame,
                product,
                version,
                run,
                typed,
                byContainers,
                owned,
                chosen,
                grams,
                instead,
                choices,
                query,
                code,
                who,
                sentence);
    }

    /**
     * A plan as it is shown.
     *
     * @param eachContainer what goes into one container, where planned from containers
     * @param larger what changes against the largest batch so far
     * @param yields what became of the last five
     * @param twoBalances whether lines say which balance serves them
     */
    public record PlanGrams(
            Grams batch,
            String reckoning,
            Optional<Grams> eachContainer,
            List<PhaseGrams> phases,
            List<Wanted> wanted,
            boolean twoBalances,
            boolean refused,
            List<Advice> larger,
            List<String> yields) {
        public PlanGrams {
            larger = List.copyOf(larger);
            yields = List.copyOf(yields);
            phases = List.copyOf(phases);
            wanted = List.copyOf(wanted);
        }
    }

    public record PhaseGrams(String name, String grams, List<LineGrams> lines) {
        public PhaseGrams {
            lines = List.copyOf(lines);
        }
    }

    /**
     * One line.
     *
     * @param asked the formula's percentage
     * @param planned what it becomes after rounding, empty where that looks the same
     * @param uncertain how well the percentage will be known, where that matters to a limit; else empty
     * @param premix whether it can be weighed as a premix
     * @param expected whether it is added up to a reading, so that the grams are only expected
     */
    public record LineGrams(
            String name,
            String inci,
            String asked,
            String planned,
            boolean expected,
            String target,
            String tolerance,
            String balance,
            List<LotGrams> lots,
            List<Advice> advice,
            String lineId,
            String uncertain,
            boolean premix) {
        public LineGrams {
            lots = List.copyOf(lots);
            advice = List.copyOf(advice);
        }
    }

    public record LotGrams(String code, String grams, String expires) {}

    /** A line of the shopping list. */
    public record Wanted(
            String name, String inci, String needed, String onHand, String aside, String missing, String buy) {}
}
