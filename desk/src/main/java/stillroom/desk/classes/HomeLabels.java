package stillroom.desk.classes;

import java.util.ArrayList;
import java.util.List;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.labels.LabelView;
import stillroom.desk.shell.Format;
import stillroom.formulary.label.Label;
import stillroom.formulary.label.LabelWarning;

/** Labels to take home, one for each set: what is in it, when it was made, that it is for oneself. */
public record HomeLabels(
        String product,
        String day,
        boolean demonstration,
        String ingredients,
        List<String> warnings,
        List<String> codes) {
    static HomeLabels of(Lesson lesson) {
        Label label = new LabelView(lesson.desk(), lesson.product(), lesson.version()).label("");
        List<String> codes = new ArrayList<>();
        for (int i = 0; i < lesson.of().sets(); i++) {
            codes.add(
                    i < lesson.of().batches().size()
                            ? BatchWork.of(lesson.desk(), lesson.of().batches().get(i))
                                    .batch()
                                    .code()
                            : "set " + (i + 1));
        }
        return new HomeLabels(
                lesson.product().name(),
                Format.day(lesson.of().day()),
                lesson.desk().ledger().settings().read().demonstration(),
                label.ingredientText(),
                label.warnings().stream()
                        .map(LabelWarning::text)
                        .filter(text -> !text.isBlank())
                        .toList(),
                codes);
    }
}
