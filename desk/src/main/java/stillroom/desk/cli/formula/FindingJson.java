package stillroom.desk.cli.formula;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import stillroom.desk.shell.Format;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.rule.Rule;
import stillroom.formulary.rule.RuleBook;
import stillroom.ledger.exchange.ReadyFormula;

/** Findings and figures as JSON. */
final class FindingJson {
    private final ReadyFormula ready;
    private final Map<String, Rule> rules;

    FindingJson(ReadyFormula ready, String market, RuleBook book) {
        this.ready = ready;
        this.rules = book.law(market).stream()
                .flatMap(law -> law.rules().stream())
                .collect(Collectors.toMap(Rule::id, Function.identity(), (one, other) -> one));
    }

    ArrayNode list(List<Finding> findings) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        findings.forEach(finding -> write(finding, list.addObject()));
        return list;
    }

    private void write(Finding finding, ObjectNode into) {
        into.put("kind", Format.style(finding.kind()));
        into.put("rule", finding.rule());
        into.put("source", finding.source());
        Rule rule = rules.get(finding.rule());
        if (rule != null) {
            into.put("sourceKey", rule.citation().sourceKey());
            into.put("paragraph", rule.citation().paragraph());
            rule.citation().readOn().ifPresent(day -> into.put("readOn", day.toString()));
        }
        into.set("lines", lines(finding.lines()));
        ArrayNode figures = into.putArray("figures");
        finding.compared().forEach(figure -> write(figure, figures.addObject()));
        into.put("says", finding.says());
        into.put("mend", finding.mend());
    }

    /** Where a finding stands: id, phase, number over the whole formula, and what the line is called. */
    ArrayNode lines(List<String> ids) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        int number = 0;
        for (Phase phase : ready.formula().phases()) {
            for (Line line : phase.lines()) {
                number++;
                if (ids.contains(line.id())) {
                    ObjectNode one = list.addObject();
                    one.put("id", line.id());
                    one.put("number", number);
                    one.put("phase", phase.name());
                    one.put("material", line.materialKey());
                    one.put("name", ready.names().getOrDefault(line.id(), line.materialKey()));
                }
            }
        }
        return list;
    }

    static void write(Figure figure, ObjectNode into) {
        into.put("name", figure.name());
        into.put("low", figure.low());
        into.put("value", figure.value());
        into.put("high", figure.high());
        into.put("unit", figure.unit());
        into.put("method", figure.method());
        ArrayNode sources = into.putArray("sources");
        figure.sources().forEach(sources::add);
    }
}
