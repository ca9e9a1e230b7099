package stillroom.desk.batches.plan;

import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchCode;
import stillroom.desk.batches.Blends;
import stillroom.desk.shell.Input;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.plan.Plan;
import stillroom.ledger.Ledger;
import stillroom.ledger.store.Saved;

/** Begins a batch: keeps the version for good, opens the batch and logs its plan, all or nothing. */
final class Beginning {
    private Beginning() {}

    /**
     * What came of it.
     *
     * @param batch the batch that was begun, if it was
     * @param clash what stood in the way, one sentence; empty where the fields say it
     * @param stale whether the formula changed since the plan was shown
     */
    record Outcome(Optional<Long> batch, String clash, boolean stale) {
        static Outcome refused(String clash) {
            return new Outcome(Optional.empty(), clash, false);
        }
    }

    static Outcome of(PlanWork work, Input input) {
        String code = BatchCode.read(input);
        String who = input.required("who", "The name of who plans");
        int edit = input.whole("edit", "The edit", 0, Integer.MAX_VALUE).orElse(-1);
        if (!input.isSound() || work.plan().isEmpty()) {
            return Outcome.refused("");
        }
        Plan plan = work.plan().get();
        if (plan.refused()) {
            return Outcome.refused(
                    "This plan should not be worked: see the lines marked below. Choose what mends them.");
        }
        Optional<Outcome> before = begunBefore(work, code, plan);
        return before.orElseGet(() -> begin(work, new Entry(code, who, edit), plan));
    }

    private record Entry(String code, String who, int edit) {}

    /** The same form sent twice begins one batch: the first one is shown where nothing was done with it since. */
    private static Optional<Outcome> begunBefore(PlanWork work, String code, Plan plan) {
        Ledger ledger = work.desk().desk().ledger();
        Optional<Batch> taken = ledger.batches().byCode(code);
        if (taken.isEmpty()) {
            return Optional.empty();
        }
        List<LogEntry> log = ledger.batches().log(taken.get().id());
        boolean same = log.size() == 1 && log.get(0).event().equals(new BatchEvent.Planned(plan));
        return Optional.of(
                same ? new Outcome(Optional.of(taken.get().id()), "", false) : Outcome.refused(BatchCode.taken(code)));
    }

    private static Outcome begin(PlanWork work, Entry entry, Plan plan) {
        Ledger ledger = work.desk().desk().ledger();
        return ledger.together(() -> {
            FormulaVersion version = work.desk().version();
            Saved<FormulaVersion> kept = ledger.products().keep(version.productId(), version.number(), entry.edit());
            return kept.match(
                    done -> open(work, entry, plan),
                    stale -> new Outcome(
                            Optional.empty(),
                            "The formula was changed since this plan was shown. Here is the plan as it is now; look at it and begin again.",
                            true));
        });
    }

    private static Outcome open(PlanWork work, Entry entry, Plan plan) {
        Ledger ledger = work.desk().desk().ledger();
        FormulaVersion version = work.desk().version();
        Optional<Batch> batch = ledger.batches()
                .open(
                        version.productId(),
                        Optional.of(version.number()),
                        entry.code(),
                        work.desk().desk().today());
        if (batch.isEmpty()) {
            return Outcome.refused(BatchCode.taken(entry.code()));
        }
        if (work.desk().owned().isEmpty()) {
            ledger.equipment().writeBalances(work.balances());
        }
        ledger.batches()
                .append(
                        batch.get().id(),
                        "begin-" + batch.get().id(),
                        work.desk().desk().now(),
                        entry.who(),
                        new BatchEvent.Planned(plan));
        work.blendedWith().ifPresent(other -> new Blends(work.desk().desk()).note(batch.get(), other));
        return new Outcome(Optional.of(batch.get().id()), "", false);
    }
}
