package stillroom.desk.labels;

import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.label.LabelWarning;

/**
 * The label of a version, or of a batch of it.
 *
 * @param about "Hand wash, version 2", or with the batch's code
 * @param back where it belongs
 * @param action where the form is posted
 * @param pdf address of the label as a file
 * @param ingredientText to paste
 * @param warnings with their sources
 * @param durability as printed, or why there is none
 * @param batch the code of the batch; empty for a version
 * @param differences how the batch departs from the version's label; empty where it fits
 * @param smallestLetters what the market's table asks for, one sentence
 */
public record LabelPage(
        Frame frame,
        String about,
        String back,
        String backWords,
        String action,
        String pdf,
        Typed typed,
        List<Choice> languages,
        String ingredientText,
        List<LabelWarning> warnings,
        String durability,
        String responsiblePerson,
        String batch,
        List<String> differences,
        String smallestLetters,
        String lawRecordedOn,
        List<Finding> findings) {
    public LabelPage {
        languages = List.copyOf(languages);
        warnings = List.copyOf(warnings);
        differences = List.copyOf(differences);
        findings = List.copyOf(findings);
    }

    /** The same for a batch: its code on the label, the file that carries it, and the form that leads back to it. */
    LabelPage forBatch(Batch of, String file) {
        return with(back, backWords, action + "?batch=" + of.id(), file, of.code());
    }

    /** The same with the way back to the label of a batch. */
    LabelPage backTo(String label, Batch of) {
        return with(label, "The label of batch " + of.code(), action + "?batch=" + of.id(), pdf, batch);
    }

    private LabelPage with(String newBack, String newWords, String newAction, String file, String code) {
        return new LabelPage(
                frame,
                about,
                newBack,
                newWords,
                newAction,
                file,
                typed,
                languages,
                ingredientText,
                warnings,
                durability,
                responsiblePerson,
                code,
                differences,
                smallestLetters,
                lawRecordedOn,
                findings);
    }
}
