package stillroom.desk.imports;

import stillroom.desk.shell.Frame;

/**
 * Where files are chosen or a table is pasted.
 *
 * @param problem why what was sent could not be taken, empty where nothing was sent
 */
public record BeginPage(Frame frame, String problem, String pasted) {}
