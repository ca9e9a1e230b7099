package stillroom.formulary.change;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.change.LawChange.LabelChange;
import stillroom.formulary.change.LawChange.Reweighed;
import stillroom.formulary.change.LawChange.RowTurn;
import stillroom.formulary.change.LawChange.Turn;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.judgement.Evaluator;
import stillroom.formulary.judgement.law.Applying;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.PriceBook;
import stillroom.formulary.label.Label;
import stillroom.formulary.label.LabelEntry;
import stillroom.formulary.label.LabelInput;
import stillroom.formulary.label.LabelWarning;
import stillroom.formulary.label.Labels;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.rule.Rule;

/** Compares the judgement and the label of one product by the law of two days. Immutable, safe to share. */
public final class LawComparison {
    private final Evaluator evaluator;
    private final Labels labels;

    public LawComparison(Evaluator evaluator) {
        this.evaluator = evaluator;
        this.labels = new Labels(evaluator.rules());
    }

    /**
     * What the later day says otherwise than the earlier one, of the same product.
     *
     * @param label what stands on its label besides; its language decides the wordings
     * @throws IllegalArgumentException if {@code to} lies before {@code from}
     */
    public LawChange between(Subject subject, MaterialBook book, LabelInput label, LocalDate from, LocalDate to) {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("the later day " + to + " lies before " + from);
        }
        Pot earlierPot = Pot.open(subject, book, PriceBook.ofCards(book), evaluator.rules(), from);
        Pot laterPot = earlierPot.at(to);
        Label before = labels.of(earlierPot, label);
        Label after = labels.of(laterPot, label);
        Evaluator.TwoDays found = evaluator.findings(earlierPot, to);
        List<Finding> earlier = with(found.earlier(), before);
        List<Finding> later = with(found.later(), after);
        List<Finding> appeared = new ArrayList<>();
        List<Reweighed> reweighed = new ArrayList<>();
        for (Finding finding : later) {
            Optional<Finding> known = same(finding, earlier);
            if (known.isEmpty()) {
                appeared.add(finding);
            } else if (known.get().kind() != finding.kind()) {
                reweighed.add(new Reweighed(known.get(), finding));
            }
        }
        List<Finding> gone = earlier.stream()
                .filter(finding -> same(finding, later).isEmpty())
                .toList();
        return new LawChange(from, to, appeared, gone, reweighed, labels(before, after), turns(laterPot, from, to));
    }

    private static List<Finding> with(List<Finding> found, Label label) {
        List<Finding> findings = new ArrayList<>(found);
        findings.addAll(label.findings());
        return findings;
    }

    /** A finding is the same where rule and lines agree; of findings about the label, which have no lines, the words too. */
    private static Optional<Finding> same(Finding finding, List<Finding> others) {
        boolean ofLabel = finding.rule().startsWith("label.");
        return others.stream()
                .filter(other -> other.rule().equals(finding.rule())
                        && other.lines().equals(finding.lines())
                        && (!ofLabel || other.says().equals(finding.says())))
                .findFirst();
    }

    private static LabelChange labels(Label before, Label after) {
        List<String> namesBefore =
                before.ingredients().stream().map(LabelEntry::name).toList();
        List<String> namesAfter =
                after.ingredients().stream().map(LabelEntry::name).toList();
        List<String> warningsBefore = warnings(before);
        List<String> warningsAfter = warnings(after);
        return new LabelChange(
                without(namesAfter, namesBefore),
                without(namesBefore, namesAfter),
                without(warningsAfter, warningsBefore),
                without(warningsBefore, warningsAfter));
    }

    private static List<String> warnings(Label label) {
        return label.warnings().stream().map(LawComparison::printed).toList();
    }

    private static String printed(LabelWarning warning) {
        return warning.text().isEmpty() ? warning.key() : warning.text();
    }

    private static List<String> without(List<String> words, List<String> others) {
        return words.stream().filter(word -> !others.contains(word)).toList();
    }

    private static List<RowTurn> turns(Pot pot, LocalDate from, LocalDate to) {
        List<RowTurn> turns = new ArrayList<>();
        for (Applying applying : Applying.ever(pot)) {
            Rule rule = applying.rule();
            turn(applying, Turn.BEGINS, rule.span().from()).ifPresent(turns::add);
            turn(applying, Turn.ENDS, rule.span().until().map(day -> day.plusDays(1)))
                    .ifPresent(turns::add);
            turn(applying, Turn.STOCK_ENDS, rule.span().stockUntil().map(day -> day.plusDays(1)))
                    .ifPresent(turns::add);
        }
        turns.removeIf(turn -> !turn.day().isAfter(from) || turn.day().isAfter(to));
        turns.sort(Comparator.comparing(RowTurn::day).thenComparing(RowTurn::rule));
        return turns;
    }

    private static Optional<RowTurn> turn(Applying applying, Turn turn, Optional<LocalDate> day) {
        Rule rule = applying.rule();
        return day.map(first -> new RowTurn(
                rule.id(),
                rule.name(),
                turn,
                first,
                rule.span().amendedBy(),
                rule.citation().words(),
                Pot.names(applying.shares())));
    }
}
