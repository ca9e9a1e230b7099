package stillroom.formulary.reformulation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Figures;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.evaluation.Surface;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.reformulation.Answer.Change;
import stillroom.formulary.reformulation.Answer.Compared;
import stillroom.science.blend.Mix;

/** Turns a blend into an answer: written as a formula, judged as on the formula page, held against what there was. */
final class Judging {
    /** Two reckonings of one sum may differ by their rounding [%, or currency per 100 g]. */
    private static final double SAME = 1e-6;
    /** A finding whose figures have moved by less, in parts, stands as it stood. */
    private static final double HARDLY = 0.1;

    private static final String TOTAL = "Sum of the lines";

    private final Recast recast;
    private final Evaluation before;
    private final Origin originBefore;

    Judging(Recast recast) {
        this.recast = recast;
        this.before = evaluate(recast.formula());
        this.originBefore = Origin.of(recast, recast.formula());
    }

    Evaluation before() {
        return before;
    }

    private Evaluation evaluate(Formula formula) {
        return recast.evaluator()
                .evaluate(Subjects.of(formula, recast.brief()), recast.book(), recast.prices(), recast.asOf());
    }

    Answer answer(Problem problem, Mix mix, double objective, boolean proven, List<String> prices) {
        List<Double> sought = mix.fractions().subList(0, problem.candidates().size());
        Rewriting rewriting = new Rewriting(problem, sought);
        Formula formula = rewriting.formula(recast.formula());
        Evaluation after = evaluate(formula);
        List<Compared> figures = compared(after.figures());
        List<Finding> arisen = after.findings().stream()
                .filter(finding -> before.findings().stream().noneMatch(old -> isNoWorse(old, finding)))
                .toList();
        List<Finding> grave = arisen.stream()
                .filter(finding -> before.findings().stream().noneMatch(old -> isMuchTheSame(old, finding)))
                .toList();
        List<Change> changes = changes(problem, rewriting.fractions());
        Origin origin = Origin.of(recast, formula);
        return new Answer(
                formula,
                after,
                objective,
                proven,
                problem.passed(),
                changes,
                figures,
                new GivingUp(problem, rewriting.fractions()).words(figures, changes, arisen, grave),
                Harshness.words(problem, rewriting.fractions()),
                arisen,
                grave,
                disagreements(problem, rewriting.fractions(), judged(problem, after, surface(formula), origin)),
                prices,
                enoughFor(problem.shelf(), changes),
                originBefore,
                origin);
    }

    private static double enoughFor(Shelf shelf, List<Change> changes) {
        return changes.stream()
                .filter(change -> change.after() > 0 && shelf.onHand().containsKey(change.materialKey()))
                .mapToDouble(change -> 100 * shelf.onHand().getOrDefault(change.materialKey(), 0.0) / change.after())
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** The same is said, or the same rule is broken by no more than it was. */
    private static boolean isNoWorse(Finding old, Finding finding) {
        boolean same = old.rule().equals(finding.rule()) && old.kind() == finding.kind();
        return same && (old.says().equals(finding.says()) || isLess(old, finding));
    }

    /** The same rule on figures that have hardly moved. */
    private static boolean isMuchTheSame(Finding old, Finding finding) {
        boolean alike = old.rule().equals(finding.rule())
                && old.kind() == finding.kind()
                && !finding.compared().isEmpty()
                && finding.compared().size() == old.compared().size();
        for (int k = 0; alike && k < finding.compared().size(); k++) {
            Figure then = old.compared().get(k);
            Figure now = finding.compared().get(k);
            alike = then.name().equals(now.name())
                    && Math.abs(now.value() - then.value()) <= HARDLY * Math.abs(then.value());
        }
        return alike;
    }

    private static boolean isLess(Finding old, Finding finding) {
        boolean alike = finding.kind() == Finding.Kind.BREACH
                && !finding.compared().isEmpty()
                && finding.compared().size() == old.compared().size()
                && finding.lines().equals(old.lines());
        for (int k = 0; alike && k < finding.compared().size(); k++) {
            Figure then = old.compared().get(k);
            Figure now = finding.compared().get(k);
            alike = then.name().equals(now.name()) && now.value() <= then.value() + SAME;
        }
        return alike;
    }

    private static List<Change> changes(Problem problem, List<Double> fractions) {
        Map<String, Change> byMaterial = new LinkedHashMap<>();
        for (int j = 0; j < fractions.size(); j++) {
            Candidate one = problem.candidates().get(j);
            if (one.now() > 0 || fractions.get(j) > 0) {
                Change change = new Change(one.key(), one.card().name(), 100 * one.now(), 100 * fractions.get(j));
                byMaterial.merge(
                        one.key(),
                        change,
                        (a, b) ->
                                new Change(a.materialKey(), a.name(), a.before() + b.before(), a.after() + b.after()));
            }
        }
        return byMaterial.values().stream()
                .sorted(Comparator.comparingDouble(change -> -Math.abs(change.by())))
                .toList();
    }

    private List<Compared> compared(Figures after) {
        Map<String, Figure> old = named(before.figures());
        List<Compared> compared = new ArrayList<>();
        named(after).forEach((name, figure) -> {
            if (old.containsKey(name)) {
                compared.add(new Compared(name, figure.unit(), old.get(name).value(), figure.value()));
            }
        });
        return compared;
    }

    private static Map<String, Figure> named(Figures figures) {
        Map<String, Figure> named = new LinkedHashMap<>();
        figures.costPer100g().match(known -> named.put("Cost per 100 g", known), because -> null);
        named.put("Water", figures.waterPercent());
        figures.activeMatterPercent()
                .forEach((charge, figure) -> named.put(
                        charge.name().charAt(0) + charge.name().substring(1).toLowerCase(Locale.ROOT)
                                + " active matter",
                        figure));
        figures.ph().match(known -> named.put("pH expected", known), because -> null);
        figures.others().forEach(figure -> named.put(figure.name(), figure));
        return named;
    }

    private Surface surface(Formula formula) {
        return recast.evaluator().surface(Subjects.of(formula, recast.brief()), recast.book(), recast.asOf());
    }

    /** The sums by which the search went, against the figures of the evaluation. */
    private static List<String> disagreements(Problem problem, List<Double> fractions, Map<String, Double> judged) {
        List<String> differ = new ArrayList<>();
        for (Requirement requirement : problem.requirements()) {
            double other = judged.getOrDefault(requirement.name(), absent(requirement));
            double searched = requirement.of(fractions);
            boolean comparable = requirement.kind() != Requirement.Kind.LAW
                    && isJudged(requirement, judged)
                    && !Double.isNaN(searched);
            if (comparable && !(Math.abs(searched - other) <= SAME * Math.max(1, Math.abs(searched)))) {
                differ.add(requirement.name() + ": " + searched + " in the search, " + other + " in the evaluation");
            }
        }
        double total = judged.getOrDefault(TOTAL, Double.NaN);
        if (!(Math.abs(total - 100) <= SAME)) {
            differ.add("the lines make " + total + " %");
        }
        return differ;
    }

    /** What the evaluation says, by the names of the search. */
    private Map<String, Double> judged(Problem problem, Evaluation evaluation, Surface surface, Origin origin) {
        Map<String, Double> judged = new LinkedHashMap<>();
        named(evaluation.figures()).forEach((name, figure) -> judged.put(name, figure.value()));
        judged.putIfAbsent(Requirements.NATURAL, origin.guaranteed());
        judged.put(TOTAL, evaluation.figures().totalPercent().value());
        evaluation
                .composition()
                .shares()
                .forEach(share -> recast.book()
                        .substance(share.substance())
                        .ifPresent(known -> judged.putIfAbsent(
                                known.inciName(), 100 * share.inThePot().nominal())));
        // Charges are counted at a pH: where the new formula has another one, they are not the same question.
        if (surface.ph().equals(problem.present().ph())) {
            double net = surface.charges().isEmpty()
                    ? 0
                    : surface.netCharge().match(known -> known.middle(), because -> Double.NaN);
            judged.put(Requirements.ANIONIC_CHARGE, -net);
            judged.put(Requirements.CATIONIC_CHARGE, net);
        }
        return judged;
    }

    /** A class of surfactants that is not there has no figure: that is 0; a mean of nothing is none. */
    private static double absent(Requirement requirement) {
        return requirement.mean().isPresent() ? Double.NaN : 0;
    }

    /** Shelves are sums of the search's own; a charge is compared at the same pH only. */
    private static boolean isJudged(Requirement requirement, Map<String, Double> judged) {
        return judged.containsKey(requirement.name())
                || requirement.name().endsWith(" active matter")
                || requirement.mean().isPresent();
    }
}
