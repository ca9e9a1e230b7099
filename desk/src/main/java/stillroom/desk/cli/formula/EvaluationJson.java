package stillroom.desk.cli.formula;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import stillroom.desk.shell.Format;
import stillroom.formulary.evaluation.Composition;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Figures;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.evaluation.PreservativeState;
import stillroom.formulary.evaluation.SubstanceShare;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Substance;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.rule.RuleBook;
import stillroom.ledger.exchange.FileProblem;
import stillroom.ledger.exchange.ReadyFormula;

/** A whole judgement as JSON. */
final class EvaluationJson {
    private EvaluationJson() {}

    static ObjectNode of(ReadyFormula ready, Evaluation evaluation, RuleBook rules, List<FileProblem> remarks) {
        ObjectNode said = JsonNodeFactory.instance.objectNode();
        said.put("name", ready.file().name());
        said.put("market", evaluation.market());
        said.put("asOf", evaluation.asOf().toString());
        said.put("lawRecordedOn", evaluation.lawRecordedOn().toString());
        ObjectNode counts = said.putObject("counts");
        for (Finding.Kind kind : Finding.Kind.values()) {
            counts.put(
                    Format.style(kind),
                    evaluation.findings().stream()
                            .filter(finding -> finding.kind() == kind)
                            .count());
        }
        said.set("findings", new FindingJson(ready, evaluation.market(), rules).list(evaluation.findings()));
        figures(evaluation.figures(), said.putObject("figures"));
        composition(evaluation.composition(), ready.book(), said.putObject("composition"));
        ArrayNode preservation = said.putArray("preservation");
        evaluation.preservation().forEach(one -> preservation(one, preservation.addObject()));
        said.set("remarks", FormulaInput.list(remarks));
        return said;
    }

    private static void figures(Figures figures, ObjectNode into) {
        FindingJson.write(figures.totalPercent(), into.putObject("totalPercent"));
        FindingJson.write(figures.waterPercent(), into.putObject("waterPercent"));
        outcome(figures.ph(), into.putObject("ph"));
        outcome(figures.costPer100g(), into.putObject("costPer100g"));
        ObjectNode active = into.putObject("activeMatterPercent");
        new TreeMap<>(figures.activeMatterPercent())
                .forEach((charge, figure) -> FindingJson.write(figure, active.putObject(Format.style(charge))));
        ArrayNode phases = into.putArray("phasePercent");
        figures.phasePercent().forEach(figure -> FindingJson.write(figure, phases.addObject()));
        ArrayNode others = into.putArray("others");
        figures.others().forEach(figure -> FindingJson.write(figure, others.addObject()));
    }

    private static void outcome(Outcome<Figure> outcome, ObjectNode into) {
        Optional<Figure> known = outcome.match(Optional::of, because -> Optional.empty());
        known.ifPresent(figure -> FindingJson.write(figure, into));
        if (known.isEmpty()) {
            into.put("notKnown", outcome.<String>match(figure -> "", because -> because));
        }
    }

    private static void composition(Composition composition, MaterialBook book, ObjectNode into) {
        ArrayNode substances = into.putArray("substances");
        for (SubstanceShare share : composition.shares()) {
            ObjectNode one = substances.addObject();
            one.put("substance", share.substance());
            one.put(
                    "inci",
                    book.substance(share.substance()).map(Substance::inciName).orElse(share.substance()));
            ArrayNode cas = one.putArray("cas");
            book.substance(share.substance())
                    .ifPresent(substance -> substance.casNumbers().forEach(cas::add));
            fraction(share.asAdded(), one.putObject("asAddedPercent"));
            fraction(share.inThePot(), one.putObject("inThePotPercent"));
            one.put("role", Format.style(share.role()));
            ArrayNode lines = one.putArray("lines");
            share.lines().forEach(lines::add);
        }
        ArrayNode unknown = into.putArray("unknown");
        composition.unknown().stream()
                .map(key -> book.material(key).map(Material::name).orElse(key))
                .forEach(unknown::add);
        into.put("unknownPercent", composition.unknownFraction() * 100);
    }

    static void fraction(MassFraction fraction, ObjectNode into) {
        into.put("low", fraction.lower() * 100);
        into.put("value", fraction.nominal() * 100);
        into.put("high", fraction.upper() * 100);
    }

    private static void preservation(PreservativeState state, ObjectNode into) {
        into.put("substance", state.substance());
        into.put("name", state.name());
        ArrayNode lines = into.putArray("lines");
        state.lines().forEach(lines::add);
        into.put("totalPercent", state.totalPercent());
        interval(state.undissociatedPercent(), into.putObject("undissociatedPercentOfTotal"));
        interval(state.freePercent(), into.putObject("freePercentOfWaterPhase"));
        state.solubilityPercent().ifPresent(percent -> into.put("solubilityPercent", percent));
        into.put("mayCrystallise", state.mayCrystallise());
        ArrayNode against = into.putArray("against");
        state.against().forEach(inhibition -> {
            ObjectNode one = against.addObject();
            one.put("group", Format.style(inhibition.group()));
            interval(inhibition.publishedPercent(), one.putObject("publishedPercent"));
            one.put("standing", Format.style(inhibition.standing()));
            one.put("source", inhibition.source());
        });
        into.put("note", state.note());
    }

    private static void interval(Interval interval, ObjectNode into) {
        into.put("low", interval.low());
        into.put("high", interval.high());
    }
}
