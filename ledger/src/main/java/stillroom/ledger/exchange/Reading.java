package stillroom.ledger.exchange;

import java.util.List;
import java.util.Optional;

/**
 * What came of reading a file.
 *
 * @param file empty where anything was wrong
 * @param problems all that was wrong, in the order of the text
 * @param remarks what was understood with a doubt, or kept without being understood
 */
public record Reading(Optional<FormulaFile> file, List<FileProblem> problems, List<FileProblem> remarks) {
    public Reading {
        problems = List.copyOf(problems);
        remarks = List.copyOf(remarks);
    }

    static Reading refused(FileProblem problem) {
        return new Reading(Optional.empty(), List.of(problem), List.of());
    }
}
