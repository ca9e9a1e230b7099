package stillroom.desk.batches.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import stillroom.desk.batches.Cards;
import stillroom.desk.batches.plan.PlanPage.LineGrams;
import stillroom.desk.batches.plan.PlanPage.LotGrams;
import stillroom.desk.batches.plan.PlanPage.PhaseGrams;
import stillroom.desk.batches.plan.PlanPage.PlanGrams;
import stillroom.desk.batches.plan.PlanPage.Wanted;
import stillroom.desk.shell.Format;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.material.Lot;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.LotStock;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;

/** A plan turned into what the page shows. */
final class PlanView {
    private final Cards cards;
    private final Map<String, Balance> balances;
    private final Map<String, LotStock> lots;
    private final int decimals;
    private final PlanWork work;

    PlanView(Cards cards, List<Balance> balances, List<LotStock> lots, int decimals, PlanWork work) {
        this.work = work;
        this.cards = cards;
        this.balances = balances.stream().collect(Collectors.toMap(Balance::name, Function.identity(), (a, b) -> a));
        this.lots = lots.stream().collect(Collectors.toMap(stock -> stock.lot().code(), Function.identity()));
        this.decimals = decimals;
    }

    PlanGrams of(Plan plan, Formula formula, Optional<Grams> eachContainer) {
        return new PlanGrams(
                plan.batch(),
                plan.reckoning(),
                eachContainer,
                formula.phases().stream()
                        .map(phase -> phase(plan, phase))
                        .filter(phase -> !phase.lines().isEmpty())
                        .toList(),
                plan.shortages().stream().map(this::wanted).toList(),
                balances.size() > 1,
                plan.refused(),
                work.larger(plan, formula),
                work.yields());
    }

    private PhaseGrams phase(Plan plan, Phase phase) {
        List<PlannedLine> lines = plan.lines().stream()
                .filter(line -> line.phaseId().equals(phase.id()))
                .toList();
        Grams sum = Grams.sum(lines.stream().map(PlannedLine::target).toList());
        return new PhaseGrams(
                phase.name(),
                Format.grams(sum),
                lines.stream().map(line -> line(plan, line)).toList());
    }

    private LineGrams line(Plan plan, PlannedLine line) {
        String asked = Format.percent(line.asked(), decimals);
        Percent real = line.planned(plan.batch());
        String planned = Format.decimal(real.value(), decimals);
        boolean same = planned.equals(Format.decimal(line.asked().value(), decimals));
        return new LineGrams(
                cards.name(line.materialKey()),
                cards.inci(line.materialKey()),
                asked,
                same ? "" : planned,
                line.toReading(),
                grams(line.target(), line.balance()),
                grams(line.tolerance(), line.balance()),
                line.balance(),
                line.lots().stream().map(share -> lot(share, line.balance())).toList(),
                line.advice(),
                line.lineId(),
                work.uncertainty(plan, line, decimals),
                work.premix(line.lineId()).isPresent());
    }

    private LotGrams lot(PlannedLine.LotShare share, String balance) {
        String expires = Optional.ofNullable(lots.get(share.lotCode()))
                .flatMap(stock -> stock.lot().expires())
                .map(Format::day)
                .orElse("");
        return new LotGrams(share.lotCode(), grams(share.mass(), balance), expires);
    }

    /** With the decimals of the balance, or all of its own where it has more. */
    private String grams(Grams mass, String balance) {
        return Optional.ofNullable(balances.get(balance))
                .filter(serving ->
                        mass.value().scale() <= serving.step().value().scale())
                .map(serving -> Format.grams(mass, serving.step()))
                .orElseGet(() -> Format.grams(mass));
    }

    /** What stands in quarantine of a material [g]; empty where nothing does. */
    private String aside(String materialKey) {
        Grams aside = Grams.sum(lots.values().stream()
                .filter(stock -> stock.lot().materialKey().equals(materialKey))
                .filter(stock -> stock.lot().state() == Lot.State.QUARANTINE)
                .map(LotStock::onHand)
                .filter(onHand -> onHand.signum() > 0)
                .toList());
        return aside.isZero() ? "" : Format.grams(aside);
    }

    private Wanted wanted(Plan.Shortage shortage) {
        return new Wanted(
                cards.name(shortage.materialKey()),
                cards.inci(shortage.materialKey()),
                Format.grams(shortage.needed()),
                Format.grams(shortage.onHand()),
                aside(shortage.materialKey()),
                Format.grams(shortage.missing()),
                Format.grams(shortage.buy()));
    }
}
