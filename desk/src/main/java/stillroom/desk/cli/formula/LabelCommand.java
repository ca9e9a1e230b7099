package stillroom.desk.cli.formula;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import stillroom.desk.shell.Format;
import stillroom.formulary.label.Durability;
import stillroom.formulary.label.Label;
import stillroom.formulary.label.LabelEntry;
import stillroom.formulary.label.LabelInput;
import stillroom.formulary.label.LabelSheet;
import stillroom.formulary.label.LabelWarning;
import stillroom.formulary.label.Labels;
import stillroom.formulary.rule.RuleBook;
import stillroom.ledger.exchange.FileProblem;
import stillroom.ledger.exchange.ReadyFormula;

/** {@code ./stillroom label FILE}: ingredient list and warnings of formula files; docs/commands.md. */
@Command(
        name = "label",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Makes the label text of formula files: ingredient list, warnings, what is missing.")
public final class LabelCommand implements Callable<Integer> {
    @Mixin
    private FormulaOptions options = new FormulaOptions();

    @Override
    public Integer call() {
        RuleBook rules = options.rules();
        options.check(rules);
        Labels labels = new Labels(rules);
        try (Library library = options.library(rules)) {
            return new FormulaInput(options, library.catalogue())
                    .each((ready, remarks) -> answer(labels, rules, ready, remarks));
        }
    }

    private Answer answer(Labels labels, RuleBook rules, ReadyFormula ready, List<FileProblem> remarks) {
        LabelInput input = ready.file()
                .label()
                .map(LabelSheet::input)
                .orElse(LabelInput.named(ready.file().name()));
        Label label =
                labels.of(ready.subject(options.asked(ready.file().brief())), ready.book(), input, options.asOf());
        return new Answer(
                EvaluateCommand.status(label.findings()),
                () -> json(ready, label, rules, remarks),
                () -> text(ready, label));
    }

    private static ObjectNode json(ReadyFormula ready, Label label, RuleBook rules, List<FileProblem> remarks) {
        ObjectNode said = JsonNodeFactory.instance.objectNode();
        said.put("productName", label.productName());
        said.put("market", label.market());
        said.put("asOf", label.asOf().toString());
        said.put("lawRecordedOn", label.lawRecordedOn().toString());
        said.put("ingredientText", label.ingredientText());
        ArrayNode ingredients = said.putArray("ingredients");
        label.ingredients().forEach(entry -> write(entry, ingredients.addObject()));
        ArrayNode warnings = said.putArray("warnings");
        label.warnings().forEach(warning -> write(warning, warnings.addObject()));
        ArrayNode precautions = said.putArray("precautions");
        label.precautions().forEach(precautions::add);
        said.put("netContent", label.netContent());
        said.put("responsiblePerson", label.responsiblePerson());
        said.put("batchCode", label.batchCode());
        said.put("function", label.function());
        label.durability().ifPresent(one -> write(one, said.putObject("durability")));
        said.set("findings", new FindingJson(ready, label.market(), rules).list(label.findings()));
        said.set("remarks", FormulaInput.list(remarks));
        return said;
    }

    private static void write(LabelEntry entry, ObjectNode into) {
        into.put("name", entry.name());
        ArrayNode substances = into.putArray("substances");
        entry.substances().forEach(substances::add);
        EvaluationJson.fraction(entry.share(), into.putObject("percent"));
        into.put("block", Format.style(entry.block()));
    }

    private static void write(LabelWarning warning, ObjectNode into) {
        into.put("key", warning.key());
        into.put("text", warning.text());
        into.put("rule", warning.rule());
        into.put("source", warning.source());
        into.put("reserve", warning.reserve());
    }

    private static void write(Durability durability, ObjectNode into) {
        durability.bestBefore().ifPresent(day -> into.put("bestBefore", day.toString()));
        durability.monthsAfterOpening().ifPresent(months -> into.put("monthsAfterOpening", months));
        into.put("reason", durability.reason());
        into.put("signedBy", durability.signedBy());
    }

    private static String text(ReadyFormula ready, Label label) {
        String name = label.productName().isEmpty() ? "Formula without a name" : label.productName();
        StringBuilder text = new StringBuilder(Plain.paragraph("", 0, name));
        text.append(Plain.paragraph(
                "",
                0,
                label.market() + ", as of " + label.asOf() + "; law as recorded on " + label.lawRecordedOn() + "."));
        text.append('\n').append(Plain.paragraph("", 0, label.ingredientText()));
        for (LabelWarning warning : label.warnings()) {
            String said = warning.text().isEmpty()
                    ? "(no wording on record in this language for " + warning.key() + ")"
                    : warning.text();
            text.append(Plain.paragraph("Warning: ", 2, said + " [" + warning.rule() + "]"));
        }
        String rest = java.util.stream.Stream.of(
                        label.function(), label.netContent(), label.batchCode(), label.responsiblePerson())
                .filter(one -> !one.isBlank())
                .collect(Collectors.joining("; "));
        label.precautions().forEach(one -> text.append(Plain.paragraph("", 0, one)));
        if (!rest.isEmpty()) {
            text.append(Plain.paragraph("", 0, rest));
        }
        text.append('\n').append(Plain.paragraph("", 0, EvaluationText.counts(label.findings())));
        label.findings().forEach(finding -> text.append('\n').append(EvaluationText.finding(ready, finding)));
        return text.toString();
    }
}
