package stillroom.desk.labels;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Judgement;
import stillroom.desk.shell.Typed;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.label.Durability;
import stillroom.formulary.label.Label;
import stillroom.formulary.label.LetterHeights;

/** Puts the label page together. */
final class LabelPages {
    private static final Map<String, String> LANGUAGES = Map.of(
            "en", "English",
            "de", "German",
            "fr", "French",
            "es", "Spanish",
            "it", "Italian",
            "nl", "Dutch",
            "pl", "Polish",
            "pt", "Portuguese",
            "sv", "Swedish");

    private LabelPages() {}

    /** @param from the batch from whose label one came; the page then leads back to it */
    static LabelPage ofVersion(Desk desk, Context request, LabelView view, Typed typed, Optional<Batch> from) {
        String about = view.product().name() + ", version " + view.version().number();
        String here = "/products/" + view.product().id() + "/versions/"
                + view.version().number();
        Frame frame = desk.frame(request, "Label", Section.PRODUCTS);
        LabelPage page = page(frame, about, here, "The formula", here, typed, view.label(""), List.of());
        return from.map(batch -> page.backTo("/batches/" + batch.id() + "/label", batch))
                .orElse(page);
    }

    static LabelPage ofBatch(Desk desk, Context request, LabelView view, Batch batch, BatchState state) {
        String about = view.product().name() + ", batch " + batch.code();
        String version = "/products/" + view.product().id() + "/versions/"
                + view.version().number();
        Frame frame = desk.frame(request, "Label", Section.BATCHES);
        Typed stored = new Typed(LabelForm.values(view.sheet()), List.of());
        LabelPage page = page(
                frame,
                about,
                "/batches/" + batch.id(),
                "The batch",
                version,
                stored,
                view.label(batch.code()),
                view.differences(state));
        return page.forBatch(batch, "/batches/" + batch.id() + "/label.pdf");
    }

    private static LabelPage page(
            Frame frame,
            String about,
            String back,
            String backWords,
            String version,
            Typed typed,
            Label label,
            List<String> differences) {
        return new LabelPage(
                frame,
                about,
                back,
                backWords,
                version + "/label",
                version + "/label.pdf",
                typed,
                languages(),
                label.ingredientText(),
                label.warnings(),
                durability(label.durability()),
                label.responsiblePerson(),
                "",
                differences,
                smallestLetters(label),
                Format.day(label.lawRecordedOn()),
                label.findings());
    }

    private static List<Choice> languages() {
        return LabelForm.languages().stream()
                .map(code -> new Choice(code, LANGUAGES.getOrDefault(code, code)))
                .toList();
    }

    /** As printed, or why there is none. */
    static String durability(Optional<Durability> durability) {
        return durability
                .map(known -> Durations.words(known) + " (" + known.reason() + "; " + known.signedBy() + ")")
                .orElse("None, because no reason is recorded: a study, or a person's signed reasoning.");
    }

    private static String smallestLetters(Label label) {
        LetterHeights heights = Judgement.letterHeights();
        Optional<LetterHeights.Height> content =
                NetContent.figure(label.netContent()).flatMap(figure -> heights.ofContent(label.market(), figure));
        Optional<LetterHeights.Height> list = heights.ofIngredients(label.market());
        StringBuilder sentence = new StringBuilder();
        content.ifPresent(height -> sentence.append("Figures of the net content at least ")
                .append(words(height))
                .append(". "));
        list.ifPresent(height -> sentence.append("Letters of the ingredient list at least ")
                .append(words(height))
                .append(". "));
        if (sentence.isEmpty()) {
            sentence.append(
                    NetContent.read(label.netContent()).isEmpty()
                            ? "They depend on the net content, which is not entered as a figure with g or ml yet. "
                            : "For this content no least height by this market's law is on record here; look it up. ");
            sentence.append("The ingredient list is printed at 1.2 mm or more.");
        }
        return sentence.toString().strip();
    }

    private static String words(LetterHeights.Height height) {
        return Format.figure(height.millimetres(), 1) + " mm (" + height.source()
                + (height.read() ? "" : ", from memory") + ")";
    }
}
