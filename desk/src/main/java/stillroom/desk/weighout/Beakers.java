package stillroom.desk.weighout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Judgement;
import stillroom.desk.trials.TrialPage;
import stillroom.desk.workshop.ToleranceRoutes;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Product;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.BatchSize;
import stillroom.formulary.plan.Bench;
import stillroom.formulary.plan.LotStock;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.plan.Planner;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.PercentRange;
import stillroom.formulary.trial.TrialSet;
import stillroom.ledger.workshop.Workshop;

/** Plans each run for the balances and the shelf as they stand, as its own plan page does, and puts the sheet together. */
final class Beakers {
    private static final String FIRST =
            "The usual cautions; the safety sheet of each material and the rules of the place come first. A trial is"
                    + " for the bench, not for people, before the safety assessor has said so.";

    private final Desk desk;
    private final TrialSet set;
    private final Grams mass;
    private final Bench bench;

    Beakers(Desk desk, TrialSet set, Grams mass) {
        this.desk = desk;
        this.set = set;
        this.mass = mass;
        List<LotStock> shelf = desk.ledger().lots().all().stream()
                .map(stocked -> new LotStock(stocked.lot(), stocked.onHand()))
                .toList();
        this.bench = new Bench(desk.ledger().equipment().balances(), shelf, ToleranceRoutes.of(desk));
    }

    WeighOut sheet() {
        Workshop workshop = desk.ledger().settings().read();
        return new WeighOut(
                set.name(),
                workshop.name(),
                Format.moment(desk.now(), desk.zone()),
                workshop.demonstration(),
                Format.grams(mass) + " g",
                cautions(),
                set.runs().stream()
                        .sorted(Comparator.comparingInt(TrialSet.Run::order))
                        .map(this::beaker)
                        .toList());
    }

    /** Of the cards in the formula, which all runs share. */
    private List<String> cautions() {
        Set<String> cautions = new LinkedHashSet<>(List.of(FIRST));
        FormulaVersion version = version(set.runs().get(0));
        MaterialBook book = desk.ledger().materials().book(version);
        version.formula().lines().stream()
                .flatMap(line -> book.material(line.materialKey()).stream())
                .filter(card -> !card.cautions().isEmpty())
                .forEach(card -> cautions.add(card.name() + ": " + String.join(" ", card.cautions())));
        return List.copyOf(cautions);
    }

    private FormulaVersion version(TrialSet.Run run) {
        return desk.ledger().products().version(set.product(), run.version()).orElseThrow();
    }

    private WeighOut.Beaker beaker(TrialSet.Run run) {
        Product product = desk.ledger().products().product(set.product()).orElseThrow();
        FormulaVersion version = version(run);
        MaterialBook book = desk.ledger().materials().book(version);
        List<WeighOut.Line> lines = new ArrayList<>();
        Set<String> said = new LinkedHashSet<>();
        try {
            Map<String, PercentRange> allowed =
                    Judgement.limits(desk, Subjects.of(version.formula(), product.brief()), book);
            Plan plan =
                    new Planner(book, bench, desk.today()).plan(version.formula(), new BatchSize.Stated(mass), allowed);
            for (PlannedLine line : plan.lines()) {
                lines.add(line(version, book, line));
                line.advice().forEach(advice -> said.add(name(book, line) + ": " + advice.says()));
            }
        } catch (IllegalArgumentException doesNotAddUp) {
            said.add("No plan: " + doesNotAddUp.getMessage());
        }
        return new WeighOut.Beaker(
                "Run " + run.order() + ", day " + run.block(), settings(run), lines, List.copyOf(said), responses());
    }

    private WeighOut.Line line(FormulaVersion version, MaterialBook book, PlannedLine line) {
        String phase = version.formula().phases().stream()
                .filter(one -> one.id().equals(line.phaseId()))
                .map(Phase::name)
                .findFirst()
                .orElse("");
        return new WeighOut.Line(
                phase,
                name(book, line),
                line.lots().stream().map(PlannedLine.LotShare::lotCode).collect(Collectors.joining(", ")),
                shown(line),
                Format.grams(line.tolerance()),
                line.toReading());
    }

    /** As its balance shows it; the line that takes the residue may need more places than that. */
    private String shown(PlannedLine line) {
        return bench.balances().stream()
                .filter(balance -> balance.name().equals(line.balance()))
                .map(Balance::step)
                .map(step -> Format.grams(line.target(), step))
                .findFirst()
                .orElse(Format.grams(line.target()));
    }

    private static String name(MaterialBook book, PlannedLine line) {
        return book.material(line.materialKey()).map(card -> card.name()).orElse(line.materialKey());
    }

    private String settings(TrialSet.Run run) {
        List<String> words = new ArrayList<>();
        for (int k = 0; k < set.variables().size(); k++) {
            words.add(set.variables().get(k).name() + ": "
                    + TrialPage.plain(run.settings().get(k)));
        }
        return String.join("; ", words);
    }

    private List<String> responses() {
        return set.responses().stream().map(TrialPage::head).toList();
    }
}
