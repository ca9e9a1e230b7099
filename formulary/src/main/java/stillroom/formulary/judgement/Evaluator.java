package stillroom.formulary.judgement;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.evaluation.PreservativeState;
import stillroom.formulary.evaluation.Preserving;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.evaluation.Surface;
import stillroom.formulary.judgement.craft.CraftChecks;
import stillroom.formulary.judgement.law.LawChecks;
import stillroom.formulary.judgement.pot.Check;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.PriceBook;
import stillroom.formulary.judgement.preservation.Keeping;
import stillroom.formulary.judgement.preservation.Preservation;
import stillroom.formulary.judgement.preservation.PreservationFindings;
import stillroom.formulary.judgement.surface.SurfaceWork;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.rule.RuleBook;
import stillroom.formulary.rule.RuleTables;

/**
 * Judges a draft, a kept version or what was really made; the same function for all three.
 *
 * <p>Immutable and safe to share between threads. Constructing it is the costly part; make one and keep it.
 */
public final class Evaluator {
    private final RuleBook rules;
    private final List<Check> steady;
    private final List<Check> dated;

    public Evaluator(RuleBook rules) {
        this.rules = rules;
        List<Check> always = new ArrayList<>(CraftChecks.steady());
        always.add(PreservationFindings::look);
        this.steady = List.copyOf(always);
        List<Check> byDay = new ArrayList<>(CraftChecks.dated());
        byDay.addAll(LawChecks.all());
        this.dated = List.copyOf(byDay);
    }

    /** An evaluator over the rule tables of this jar. */
    public static Evaluator standard() {
        return new Evaluator(RuleTables.standard());
    }

    public RuleBook rules() {
        return rules;
    }

    /** With the prices that stand on the cards. */
    public Evaluation evaluate(Subject subject, MaterialBook book, LocalDate asOf) {
        return evaluate(subject, book, PriceBook.ofCards(book), asOf);
    }

    /**
     * Figures and findings, weightiest first.
     *
     * @param asOf the day whose law is asked
     */
    public Evaluation evaluate(Subject subject, MaterialBook book, PriceBook prices, LocalDate asOf) {
        Pot pot = Pot.open(subject, book, prices, rules, asOf);
        List<Finding> findings = findings(pot);
        String market = subject.brief().market();
        List<PreservativeState> preservation =
                pot.workingPh().map(ph -> Preservation.states(pot, ph)).orElse(List.of());
        return new Evaluation(
                asOf, market, rules.recordedOn(market), pot.figures(), pot.composition(), findings, preservation);
    }

    /** What all checks find in an opened pot, weightiest first. */
    public List<Finding> findings(Pot pot) {
        return with(steady(pot), pot);
    }

    /** What all checks find in the same pot on another day; those that do not ask for the day look once. */
    public TwoDays findings(Pot pot, LocalDate later) {
        List<Finding> always = steady(pot);
        return new TwoDays(with(always, pot), with(always, pot.at(later)));
    }

    /** Findings of one pot by the law of two days, each weightiest first. */
    public record TwoDays(List<Finding> earlier, List<Finding> later) {
        public TwoDays {
            earlier = List.copyOf(earlier);
            later = List.copyOf(later);
        }
    }

    private List<Finding> steady(Pot pot) {
        List<Finding> findings = new ArrayList<>(pot.subject().found());
        steady.forEach(check -> check.look(pot, findings::add));
        return findings;
    }

    private List<Finding> with(List<Finding> always, Pot pot) {
        List<Finding> findings = new ArrayList<>(always);
        dated.forEach(check -> check.look(pot, findings::add));
        findings.sort(Comparator.comparing(Finding::kind));
        return findings;
    }

    /**
     * What keeps a product: the preservatives at its pH and over a span of pH, water activity, boosters.
     *
     * @param span of pH to draw
     * @param step between two points, above 0 [pH]
     */
    public Preserving preserving(Subject subject, MaterialBook book, LocalDate asOf, Interval span, double step) {
        return Keeping.of(Pot.open(subject, book, PriceBook.ofCards(book), rules, asOf), span, step);
    }

    /** Surfactants, phases, HLB and net charge. */
    public Surface surface(Subject subject, MaterialBook book, LocalDate asOf) {
        return SurfaceWork.of(Pot.open(subject, book, PriceBook.ofCards(book), rules, asOf));
    }
}
