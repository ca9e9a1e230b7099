package stillroom.science.blend;

/** An open part of a search: decisions, the bound on what lies below them, and the basis to begin from. */
record Node(Decisions decisions, double bound, Basis basis) {}
