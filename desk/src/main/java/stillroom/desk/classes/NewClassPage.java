package stillroom.desk.classes;

import java.util.List;
import stillroom.desk.recipes.HandOutPage;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/** Where a class is set up. */
public record NewClassPage(
        Frame frame, String about, String path, Typed typed, List<LineChoice> lines, List<Earlier> earlier) {
    /** A line that may come as a premix, with what may carry it. */
    public record LineChoice(String field, String label, List<Choice> carriers) {}

    /** A class that was set up before. */
    public record Earlier(String path, String words) {}

    public List<Choice> steps() {
        return HandOutPage.STEPS.stream()
                .map(step -> new Choice(step, step + " g"))
                .toList();
    }
}
