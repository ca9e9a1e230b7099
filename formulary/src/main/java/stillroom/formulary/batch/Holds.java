package stillroom.formulary.batch;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillroom.formulary.hygiene.HoldKind;
import stillroom.formulary.hygiene.HoldLimits;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.MaterialBook;

/**
 * How long each phase, the bulk, and what was not yet preserved stood. A vessel into which another is emptied, or the only
 * one of the batch, holds bulk from then on; the others hold a phase.
 */
public final class Holds {
    private final HoldLimits limits;
    private final MaterialBook book;
    private final Instant now;
    private final boolean oneVessel;
    private final Map<String, Standing> standing = new LinkedHashMap<>();
    private final List<Hold> ended = new ArrayList<>();

    /** What stands in a vessel, by kind since when. */
    private static final class Standing {
        private final Map<HoldKind, Instant> since = new LinkedHashMap<>();
        private boolean preserved;
    }

    private Holds(HoldLimits limits, MaterialBook book, Instant now, boolean oneVessel) {
        this.limits = limits;
        this.book = book;
        this.now = now;
        this.oneVessel = oneVessel;
    }

    /**
     * @param state what the log adds up to
     * @param book to tell water and preservatives
     */
    public static List<Hold> of(
            List<LogEntry> log, BatchState state, HoldLimits limits, MaterialBook book, Instant now) {
        Holds holds = new Holds(limits, book, now, state.vessels().size() == 1);
        Instant end = state.decision().map(Logged::at).orElse(now);
        for (LogEntry entry : log) {
            if (!state.struck().contains(entry.number())) {
                holds.take(entry, state);
            }
        }
        if (state.fills().isEmpty()) {
            holds.standing.forEach((vessel, one) -> holds.endAll(vessel, one, end.isBefore(now) ? end : now));
        }
        return List.copyOf(holds.ended);
    }

    private void take(LogEntry entry, BatchState state) {
        BatchEvent event = entry.event();
        if (event instanceof BatchEvent.Poured poured && poured.mass().signum() > 0) {
            poured(poured, entry.at());
        } else if (event instanceof BatchEvent.BulkReceived bulk) {
            of(bulk.vessel()).since.putIfAbsent(HoldKind.BULK, entry.at());
        } else if (event instanceof BatchEvent.Combined combined
                && !combined.from().equals(combined.into())) {
            combined(combined, entry.at());
        } else if (event instanceof BatchEvent.Filled filled && isLast(filled, entry, state)) {
            endAll(filled.vessel(), of(filled.vessel()), entry.at());
            standing.remove(filled.vessel());
        }
    }

    private static boolean isLast(BatchEvent.Filled filled, LogEntry entry, BatchState state) {
        return state.fills().stream()
                .noneMatch(later -> later.number() > entry.number()
                        && later.event().vessel().equals(filled.vessel()));
    }

    private Standing of(String vessel) {
        return standing.computeIfAbsent(vessel, name -> new Standing());
    }

    private void poured(BatchEvent.Poured poured, Instant at) {
        Standing one = of(poured.vessel());
        HoldKind kind = oneVessel || one.since.containsKey(HoldKind.BULK) ? HoldKind.BULK : HoldKind.PHASE;
        one.since.putIfAbsent(kind, at);
        Family family =
                book.material(poured.materialKey()).map(card -> card.family()).orElse(Family.OTHER);
        if (family == Family.PRESERVATIVE) {
            one.preserved = true;
            end(poured.vessel(), one, HoldKind.SLURRY, at);
        } else if (family == Family.WATER && !one.preserved) {
            one.since.putIfAbsent(HoldKind.SLURRY, at);
        }
    }

    private void combined(BatchEvent.Combined combined, Instant at) {
        Standing from = of(combined.from());
        Standing into = of(combined.into());
        boolean preserved = from.preserved || into.preserved;
        Instant unpreserved = from.since.getOrDefault(HoldKind.SLURRY, at);
        boolean wet = from.since.containsKey(HoldKind.SLURRY) || into.since.containsKey(HoldKind.SLURRY);
        end(combined.from(), from, HoldKind.PHASE, at);
        end(combined.into(), into, HoldKind.PHASE, at);
        into.since.putIfAbsent(HoldKind.BULK, at);
        into.preserved = preserved;
        if (preserved) {
            end(combined.from(), from, HoldKind.SLURRY, at);
            end(combined.into(), into, HoldKind.SLURRY, at);
        } else if (wet) {
            into.since.merge(HoldKind.SLURRY, unpreserved, (a, b) -> a.isBefore(b) ? a : b);
        }
        standing.remove(combined.from());
    }

    private void endAll(String vessel, Standing one, Instant at) {
        List.copyOf(one.since.keySet()).forEach(kind -> end(vessel, one, kind, at));
    }

    private void end(String vessel, Standing one, HoldKind kind, Instant at) {
        Instant from = one.since.remove(kind);
        if (from != null) {
            ended.add(new Hold(vessel, kind, from, at.isBefore(now) ? at : now, kind.limit(limits)));
        }
    }
}
