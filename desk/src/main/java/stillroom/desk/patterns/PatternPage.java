package stillroom.desk.patterns;

import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;
import stillroom.formulary.evaluation.Finding;

/** What the pattern page shows. */
public record PatternPage(Frame frame, Typed wrong, List<Choice> choices, List<Finding> findings) {}
