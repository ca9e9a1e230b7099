package stillroom.desk.today;

import stillroom.desk.shell.Frame;

/** What the start page shows. */
public record TodayPage(Frame frame) {}
