package stillroom.desk.batches.plan;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillroom.desk.batches.Cards;
import stillroom.desk.batches.LastTime;
import stillroom.desk.batches.Who;
import stillroom.desk.batches.plan.PlanPage.PlanGrams;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.ToolShed;
import stillroom.desk.shell.Typed;
import stillroom.desk.trials.Studies;
import stillroom.formulary.Problem;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.BatchSize;
import stillroom.formulary.plan.LotStock;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlanProblems;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.plan.PremixPlan;
import stillroom.formulary.plan.ScaleUp;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.PercentRange;

/** One look at the plan page: the form read, the plan made, the page put together. */
final class PlanWork {
    static final Section SECTION = Section.PRODUCTS;

    private final PlanDesk desk;
    private final PlanForm form;
    private final WeighedAs as;
    private final LastTime last;
    private final List<LotStock> shelf;
    private final String instead;
    private final Optional<Plan> plan;

    PlanWork(PlanDesk desk, Input input) {
        this.desk = desk;
        this.form = PlanForm.read(input, desk.owned());
        this.as = WeighedAs.of(desk, input, form);
        this.last = LastTime.of(desk.desk(), desk.product().id(), Optional.empty());
        this.shelf = as.shelf(desk, input);
        this.instead = form.size().map(this::standInTheWay).orElse("");
        this.plan = input.isSound() && instead.isEmpty()
                ? form.size().map(size -> desk.plan(as, size, form.balances(), shelf))
                : Optional.empty();
    }

    PlanDesk desk() {
        return desk;
    }

    Optional<Plan> plan() {
        return plan;
    }

    List<Balance> balances() {
        return form.balances();
    }

    /** The batch with which this one is to be blended, of the same product. */
    Optional<Batch> blendedWith() {
        return desk.desk()
                .ledger()
                .batches()
                .byCode(form.input().text("blend"))
                .filter(batch -> batch.productId() == desk.product().id());
    }

    /** How a line that is too little could be weighed as a premix. */
    Optional<PremixPlan> premix(String lineId) {
        return plan.flatMap(made -> form.size().flatMap(size -> desk.premix(as, size, form.balances(), shelf, lineId)));
    }

    /** Where one comes back to this plan. */
    String address() {
        return "/products/" + desk.product().id() + "/versions/"
                + desk.version().number() + "/plan?" + query();
    }

    /** Problems of the size go beside their fields; what the formula itself lacks is one sentence in place of the plan. */
    private String standInTheWay(BatchSize size) {
        List<Problem> problems = PlanProblems.of(desk.version().formula(), size);
        problems.stream()
                .filter(problem -> !problem.field().equals("formula"))
                .forEach(problem -> form.input().refuse(ownName(problem.field()), problem.sentence()));
        return problems.stream()
                .filter(problem -> problem.field().equals("formula"))
                .map(Problem::sentence)
                .collect(Collectors.joining(" "));
    }

    private static String ownName(String field) {
        return switch (field) {
            case "fillEach" -> "fill";
            case "setAside" -> "retained";
            default -> field;
        };
    }

    PlanPage page(Frame frame) {
        Input input = form.input();
        int decimals = desk.desk().ledger().settings().read().decimalsShown();
        PlanView view = new PlanView(new Cards(as.book()), form.balances(), shelf, decimals, this);
        Optional<PlanGrams> grams = plan.map(made -> view.of(made, as.formula(), each()));
        return new PlanPage(
                frame,
                desk.product(),
                desk.version(),
                Studies.run(desk.desk(), desk.product().id(), desk.version().number()),
                typed(input),
                PlanForm.byContainers(input),
                desk.owned(),
                form.balances().stream().map(Balance::name).collect(Collectors.toSet()),
                grams,
                instead,
                as.choices(),
                query(),
                input.has("code") ? input.text("code") : proposedCode(),
                input.has("who")
                        ? input.text("who")
                        : Who.ofNewest(desk.desk().ledger()).pours(),
                "");
    }

    /** While one is still typing, a field that is empty yet is not called missing; a density that is wanted is. */
    private static Typed typed(Input input) {
        Typed typed = input.typed();
        boolean begins = input.has("code");
        return new Typed(
                typed.values(),
                typed.problems().stream()
                        .filter(problem -> begins
                                || problem.field().equals("density")
                                || !typed.value(problem.field()).isBlank())
                        .toList());
    }

    /** What changes against the largest batch made, materials by their names. */
    List<PlannedLine.Advice> larger(Plan made, Formula formula) {
        List<String> keys = formula.lines().stream().map(Line::materialKey).toList();
        Cards cards = new Cards(as.book());
        return new ScaleUp(
                        made, formula, as.book(), last.largest(), vessel(made.batch()), form.balances(), last.minutes())
                .advice().stream()
                        .map(advice -> new PlannedLine.Advice(
                                cards.named(advice.says(), keys), advice.choices(), advice.refuses()))
                        .toList();
    }

    /** The smallest vessel, on the workshop's list or used before, that is not too full; else the largest [g]. */
    private Optional<Grams> vessel(Grams batch) {
        List<Grams> capacities = Stream.concat(
                        new ToolShed(desk.desk()).tools().list().stream().flatMap(tool -> tool.capacity().stream()),
                        last.vessel().stream())
                .toList();
        return capacities.stream()
                .filter(capacity -> ScaleUp.leavesRoom(batch, capacity))
                .min(Comparator.naturalOrder())
                .or(() -> capacities.stream().max(Comparator.naturalOrder()));
    }

    List<String> yields() {
        return last.yields();
    }

    /** The percentage of a limited line with what the weighings leave open; empty for the others. */
    String uncertainty(Plan made, PlannedLine line, int decimals) {
        Optional<PercentRange> allowed = Optional.ofNullable(desk.allowed(as).get(line.lineId()));
        if (allowed.isEmpty()) {
            return "";
        }
        return Uncertain.of(made, line, form.balances(), as, desk, allowed.get(), decimals);
    }

    private Optional<Grams> each() {
        return form.size()
                .filter(BatchSize.FromContainers.class::isInstance)
                .map(size -> ((BatchSize.FromContainers) size).fillEach());
    }

    private String proposedCode() {
        return desk.desk().ledger().batches().proposeCode(desk.desk().today());
    }

    private String query() {
        String fields = form.input().typed().values().entrySet().stream()
                .filter(field ->
                        PlanPage.carried(field.getKey()) && !field.getValue().isEmpty())
                .map(field -> pair(field.getKey(), field.getValue()))
                .collect(Collectors.joining("&"));
        String balances = form.balances().stream()
                .map(balance -> "&" + pair("balance", balance.name()))
                .collect(Collectors.joining());
        return fields + balances;
    }

    private static String pair(String name, String value) {
        return name + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8);
    }
}
