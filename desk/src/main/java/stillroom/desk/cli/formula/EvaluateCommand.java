package stillroom.desk.cli.formula;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.judgement.Evaluator;
import stillroom.ledger.exchange.FileProblem;
import stillroom.ledger.exchange.ReadyFormula;

/** {@code ./stillroom evaluate FILE}: composition, figures and findings of formula files; docs/commands.md. */
@Command(
        name = "evaluate",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Judges formula files: composition, figures, and findings with their sources.")
public final class EvaluateCommand implements Callable<Integer> {
    @Mixin
    private FormulaOptions options = new FormulaOptions();

    @Override
    public Integer call() {
        Evaluator evaluator = new Evaluator(options.rules());
        options.check(evaluator.rules());
        try (Library library = options.library(evaluator.rules())) {
            return new FormulaInput(options, library.catalogue())
                    .each((ready, remarks) -> answer(evaluator, ready, remarks));
        }
    }

    private Answer answer(Evaluator evaluator, ReadyFormula ready, List<FileProblem> remarks) {
        Evaluation evaluation =
                evaluator.evaluate(ready.subject(options.asked(ready.file().brief())), ready.book(), options.asOf());
        return new Answer(
                status(evaluation.findings()),
                () -> EvaluationJson.of(ready, evaluation, evaluator.rules(), remarks),
                () -> EvaluationText.of(ready, evaluation, remarks));
    }

    static Status status(List<Finding> findings) {
        if (findings.stream().anyMatch(finding -> finding.kind().isWarning())) {
            return Status.WARNED;
        }
        return findings.stream().anyMatch(finding -> finding.kind() == Finding.Kind.CANNOT_JUDGE)
                ? Status.OPEN
                : Status.CLEAN;
    }
}
