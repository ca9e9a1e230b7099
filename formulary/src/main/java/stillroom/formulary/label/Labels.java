package stillroom.formulary.label;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.judgement.law.Applying;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.PriceBook;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.rule.Rule;
import stillroom.formulary.rule.RuleBook;
import stillroom.formulary.rule.WarningText;

/** Makes labels: of a formula version, and of what was really made, by the same function. */
public final class Labels {
    private final RuleBook rules;

    public Labels(RuleBook rules) {
        this.rules = rules;
    }

    /** The label for the market of the subject's brief on that day. */
    public Label of(Subject subject, MaterialBook book, LabelInput input, LocalDate asOf) {
        return of(Pot.open(subject, book, PriceBook.ofCards(book), rules, asOf), input);
    }

    /** The label of what is in an opened pot, for the market and the day that it is asked by. */
    public Label of(Pot pot, LabelInput input) {
        String market = pot.brief().market();
        Named.Sums named = Named.of(pot);
        Names names = new Names(pot.book(), rules.names().getOrDefault(market, Map.of()), rules.law(market));
        List<LabelEntry> entries = IngredientList.of(pot, named, names);
        List<LabelWarning> warnings = warnings(pot, input.language());
        List<Finding> findings = new ArrayList<>();
        LabelFindings.look(pot, named, entries, warnings, input, findings::add);
        return new Label(
                input.productName(),
                market,
                pot.asOf(),
                rules.recordedOn(market),
                "Ingredients",
                entries,
                named.unnamed(),
                warnings,
                input.precautions(),
                input.function(),
                input.netContent(),
                input.batchCode(),
                input.responsiblePerson(),
                input.durability(),
                findings);
    }

    /** One warning per key, whichever rule demands it first. */
    private List<LabelWarning> warnings(Pot pot, String language) {
        Map<String, LabelWarning> byKey = new LinkedHashMap<>();
        for (Applying applying : Applying.on(pot, pot.asOf())) {
            Rule rule = applying.rule();
            if (rule.kind() != Rule.Kind.PROHIBITED && applying.demandsWarning(pot)) {
                rule.demand()
                        .warnings()
                        .forEach(key -> byKey.computeIfAbsent(key, missing -> warning(missing, rule, language)));
            }
        }
        return List.copyOf(byKey.values());
    }

    private LabelWarning warning(String key, Rule rule, String language) {
        Optional<WarningText> text = rules.warning(key, language);
        return new LabelWarning(
                key,
                text.map(WarningText::text).orElse(""),
                rule.id(),
                rule.citation().words(),
                text.flatMap(WarningText::reserve).orElse(""));
    }
}
