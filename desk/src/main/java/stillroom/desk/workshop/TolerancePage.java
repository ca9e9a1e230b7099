package stillroom.desk.workshop;

import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/** How exact the weighing is to be. */
public record TolerancePage(Frame frame, Typed typed) {}
