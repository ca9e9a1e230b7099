package stillroom.formulary.judgement.law;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.judgement.pot.Words;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.rule.Rule;

/** Findings made of a rule row; an unread row never says more than "look at this". */
final class RowFinding {
    private RowFinding() {}

    static Finding of(
            Finding.Kind kind, Rule rule, List<String> lines, List<Figure> compared, String says, String mend) {
        boolean law = rule.kind() != Rule.Kind.GUIDANCE;
        boolean believed = rule.isRead() && law || kind == Finding.Kind.CANNOT_JUDGE;
        Finding.Kind weight = believed ? kind : Finding.Kind.LOOK_AT_THIS;
        String reserve = rule.isRead() ? "" : " This row was not read in the legal text: check it there.";
        String advice = law ? "" : " Advice, not law.";
        return new Finding(weight, rule.id(), rule.citation().words(), lines, compared, says + advice + reserve, mend);
    }

    static Finding prohibited(Applying applying) {
        Rule rule = applying.rule();
        boolean trace =
                applying.shares().stream().allMatch(share -> share.share().role() == Constituent.Role.IMPURITY);
        String names = Words.list(Pot.names(applying.shares()));
        String forbidden = " may not be in " + (isForEverything(rule) ? "a cosmetic product" : "this kind of product");
        return of(
                trace ? Finding.Kind.LOOK_AT_THIS : Finding.Kind.BREACH,
                rule,
                Pot.lines(applying.shares()),
                List.of(),
                trace
                        ? names + " comes along as an impurity; " + rule.name() + forbidden + "."
                        : names + forbidden + (rule.name().equalsIgnoreCase(names) ? "." : ": " + rule.name() + "."),
                (trace ? "Ask the supplier how much comes along, and for a grade with less." : "Take it out.")
                        + (rule.note().isEmpty() ? "" : " " + rule.note()));
    }

    private static boolean isForEverything(Rule rule) {
        return rule.kind() == Rule.Kind.PROHIBITED
                && rule.scope().products().size() == ProductType.values().length
                && rule.scope().onlyFor().isEmpty();
    }

    static Finding people(Applying applying, List<Brief.People> refused) {
        List<String> who = refused.stream().map(RowFinding::words).toList();
        return of(
                Finding.Kind.BREACH,
                applying.rule(),
                Pot.lines(applying.shares()),
                List.of(),
                Words.list(Pot.names(applying.shares())) + " may not be used in a product for " + Words.list(who) + ".",
                "Choose another material, or another group of people.");
    }

    private static String words(Brief.People people) {
        return people.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    static Finding tooHigh(Applying applying, Interval ph, double highest) {
        return of(
                Finding.Kind.BREACH,
                applying.rule(),
                Pot.lines(applying.shares()),
                acidity(ph, "Highest allowed", highest),
                "With " + Words.list(Pot.names(applying.shares())) + " the pH may be at most " + Words.figure(highest)
                        + "; the product is at up to " + Words.figure(ph.high()) + ".",
                "Lower the pH.");
    }

    static Finding tooLow(Applying applying, Interval ph, double lowest) {
        return of(
                Finding.Kind.BREACH,
                applying.rule(),
                Pot.lines(applying.shares()),
                acidity(ph, "Lowest allowed", lowest),
                "With " + Words.list(Pot.names(applying.shares())) + " the pH must be at least " + Words.figure(lowest)
                        + "; the product is at down to " + Words.figure(ph.low()) + ".",
                "Raise the pH.");
    }

    private static List<Figure> acidity(Interval ph, String name, double figure) {
        return List.of(
                new Figure("Product", ph.low(), ph.middle(), ph.high(), "pH", "", List.of()),
                Figure.exactly(name, figure, "pH", "the row's figure"));
    }

    static Finding acidityUnknown(Applying applying) {
        return cannot(
                applying,
                List.of(),
                "Cannot judge: " + applying.rule().name()
                        + " is bound to a pH, and the pH of the product is not known.",
                "Give the product a pH band, or measure it.");
    }

    static Finding unknownContent(Applying applying, Counted counted, List<Figure> compared) {
        Rule rule = applying.rule();
        String as = LimitJudgement.words(rule.limit().expressedAs());
        return cannot(
                applying,
                compared,
                "Cannot judge: " + rule.name() + " is limited to "
                        + Words.figure(rule.limit().percent().orElseThrow()) + " %, counted as " + as
                        + "; how much of it " + Words.list(counted.uncertainOf()) + " holds is not known.",
                "Ask the supplier for the content of " + as + ".");
    }

    /** Something that a composition cannot show, to be asked of the supplier. */
    static Finding notice(Applying applying) {
        Rule rule = applying.rule();
        String name = rule.name();
        return of(
                Finding.Kind.LOOK_AT_THIS,
                rule,
                Pot.lines(applying.shares()),
                List.of(),
                Words.list(Pot.names(applying.shares())) + ": " + name + ".",
                rule.note());
    }

    private static Finding cannot(Applying applying, List<Figure> compared, String says, String mend) {
        return of(Finding.Kind.CANNOT_JUDGE, applying.rule(), Pot.lines(applying.shares()), compared, says, mend);
    }

    static Finding company(Applying applying, List<Share> beside) {
        List<Share> all = new ArrayList<>(applying.shares());
        all.addAll(beside);
        return of(
                Finding.Kind.BREACH,
                applying.rule(),
                Pot.lines(all),
                List.of(),
                Words.list(Pot.names(applying.shares())) + " may not stand beside " + Words.list(Pot.names(beside))
                        + ".",
                "Take one of them out.");
    }

    /** What a row will say once it counts. */
    static Finding coming(Finding finding, Rule rule) {
        String from = rule.span().from().map(Object::toString).orElse("");
        String stock = rule.span()
                .stockUntil()
                .map(day -> " Older stock may be sold until " + day + ".")
                .orElse("");
        return new Finding(
                Finding.Kind.LOOK_AT_THIS,
                finding.rule(),
                finding.source(),
                finding.lines(),
                finding.compared(),
                "From " + from + ": " + finding.says() + stock,
                finding.mend());
    }
}
