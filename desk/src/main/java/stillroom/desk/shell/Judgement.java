package stillroom.desk.shell;

import java.time.LocalDate;
import java.util.Map;
import stillroom.formulary.change.LawComparison;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Preserving;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.evaluation.Surface;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.judgement.Evaluator;
import stillroom.formulary.judgement.claim.ClaimsGate;
import stillroom.formulary.judgement.law.LineLimits;
import stillroom.formulary.label.Label;
import stillroom.formulary.label.LabelInput;
import stillroom.formulary.label.Labels;
import stillroom.formulary.label.LetterHeights;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.quantity.PercentRange;
import stillroom.formulary.rule.RuleBook;

/** The one way from a page to the judgement of a subject: today's law, this workshop's prices. */
public final class Judgement {
    private Judgement() {}

    /** The rule tables are read once, when they are first asked for. */
    private static final class Tables {
        static final Evaluator EVALUATOR = new Evaluator(Law.book());
        static final ClaimsGate GATE = new ClaimsGate(EVALUATOR.rules());
        static final Labels LABELS = new Labels(EVALUATOR.rules());
        static final Map<String, String> TEXTS = Law.texts();
        static final LetterHeights HEIGHTS = LetterHeights.load();
        static final LawComparison COMPARISON = new LawComparison(EVALUATOR);
    }

    /** Judges with the cards as they stand now. */
    public static Evaluation of(Desk desk, Subject subject) {
        return of(desk, subject, desk.ledger().materials().book());
    }

    /** Judges with just these cards, such as those that a kept version means. */
    public static Evaluation of(Desk desk, Subject subject, MaterialBook book) {
        return Tables.EVALUATOR.evaluate(subject, book, Prices.of(desk.ledger(), book), desk.today());
    }

    /** Between which percentages a plan may round the lines of a subject, for those that something limits. */
    public static Map<String, PercentRange> limits(Desk desk, Subject subject, MaterialBook book) {
        return LineLimits.of(subject, book, Tables.EVALUATOR.rules(), desk.today());
    }

    /** The rule tables as they are in this program, by file name. */
    public static Map<String, String> ruleTexts() {
        return Tables.TEXTS;
    }

    /** How small letters on a label may be. */
    public static LetterHeights letterHeights() {
        return Tables.HEIGHTS;
    }

    /** Judges by the law of another day, with the prices of the cards. */
    public static Evaluation of(Subject subject, MaterialBook book, LocalDate asOf) {
        return Tables.EVALUATOR.evaluate(subject, book, asOf);
    }

    /** Holds the law of two days against each other. */
    public static LawComparison comparison() {
        return Tables.COMPARISON;
    }

    /** The evaluation itself, for work that judges many formulas. */
    public static Evaluator evaluator() {
        return Tables.EVALUATOR;
    }

    /** All that is on record of the law. */
    public static RuleBook rules() {
        return Tables.EVALUATOR.rules();
    }

    /** What keeps a subject, at its pH and over a span of pH. */
    public static Preserving preserving(Desk desk, Subject subject, MaterialBook book, Interval span, double step) {
        return Tables.EVALUATOR.preserving(subject, book, desk.today(), span, step);
    }

    /** Surfactants, phases, HLB and net charge of a subject. */
    public static Surface surface(Desk desk, Subject subject, MaterialBook book) {
        return Tables.EVALUATOR.surface(subject, book, desk.today());
    }

    /** What the claims gate says of a brief. */
    public static ClaimsGate.Verdict claims(Brief brief) {
        return Tables.GATE.judge(brief);
    }

    /** The label of a subject by today's law. */
    public static Label label(Desk desk, Subject subject, MaterialBook book, LabelInput input) {
        return Tables.LABELS.of(subject, book, input, desk.today());
    }
}
