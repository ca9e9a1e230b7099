package stillroom.desk.sheets;

import stillroom.desk.trace.Impact;

/** The trace as a sheet to act by. */
public record ImpactSheet(Impact impact, String printed, String foot, boolean demonstration) {}
