package stillroom.desk.batches.bench;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.Masses;
import stillroom.desk.batches.bench.BenchPage.Way;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Judgement;
import stillroom.formulary.batch.Addition;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.Mend;
import stillroom.formulary.batch.OverPour;
import stillroom.formulary.batch.Replanning;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.LotStock;
import stillroom.formulary.plan.Plan;

/** The ways out of an over-pour, in words. */
final class Mends {
    private static final int DECIMALS = 2;

    private final BatchWork work;
    private final String vessel;

    Mends(BatchWork work, String vessel) {
        this.work = work;
        this.vessel = vessel;
    }

    /** The mildest first; none where a balance of the plan is no longer on file. */
    List<Mend> of(String lineId, List<Balance> balances) {
        Plan plan = work.plan().orElseThrow();
        boolean known = plan.lines().stream()
                .allMatch(line -> balances.stream().anyMatch(b -> b.name().equals(line.balance())));
        if (!known) {
            return List.of();
        }
        List<LotStock> shelf = work.desk().ledger().lots().all().stream()
                .map(stocked -> new LotStock(stocked.lot(), stocked.onHand()))
                .toList();
        Set<String> limited = Judgement.limits(
                        work.desk(), Subjects.of(work.formula(), work.product().brief()), work.book())
                .keySet();
        return new OverPour(plan, work.formula(), work.state(), balances, shelf, limited).ways(lineId);
    }

    Panel.MendShown shown(Mend mend, String lineId) {
        if (mend instanceof Mend.Strike strike) {
            return strike(strike);
        }
        if (mend instanceof Mend.Leave leave) {
            return say("Leave it", leave.why());
        }
        if (mend instanceof Mend.TakeBack back) {
            return say("Take back " + Masses.shown(back.mass()) + " g", "Still on top, not stirred in: lift it off.");
        }
        if (mend instanceof Mend.ScalePhase scale) {
            return new Panel.MendShown(
                    "Make the phase larger, "
                            + scale.factor().stripTrailingZeros().toPlainString() + " times",
                    "In the end the phase weighs " + Masses.shown(scale.use().plus(scale.discard()))
                            + " g: use " + Masses.shown(scale.use()) + " g of it and throw "
                            + Masses.shown(scale.discard()) + " g away.",
                    additions(scale.additions()),
                    List.of(),
                    Optional.empty(),
                    "scale",
                    "Make the phase larger");
        }
        if (mend instanceof Mend.LargerBatch larger) {
            return new Panel.MendShown(
                    "Make the batch larger: " + Masses.shown(larger.batch()) + " g",
                    "In the end the batch weighs " + Masses.shown(larger.batch()) + " g instead of "
                            + Masses.shown(work.plan().orElseThrow().batch())
                            + " g, with every line within its tolerance.",
                    additions(larger.additions()),
                    larger.against().stream()
                            .map(against -> work.cards().named(against, work.materialKeys()))
                            .toList(),
                    Optional.empty(),
                    "larger",
                    "Make the batch larger");
        }
        if (mend instanceof Mend.SecondBatch second) {
            return second(second, lineId);
        }
        if (mend instanceof Mend.Accept accept) {
            return say(
                    "Keep it as it is",
                    "The line is then " + Format.decimal(accept.made().value(), DECIMALS)
                            + " % of the product. What that means stands below.");
        }
        return new Panel.MendShown(
                "Give it up",
                new Losing(work).says(),
                List.of(),
                List.of(),
                Optional.of(
                        new Way("Give the batch up", work.path() + "/bench" + Wish.query(vessel, Doing.GIVEUP), false)),
                "",
                "");
    }

    /** Leads to the plan of the second batch, which knows with which one it is to be blended. */
    private Panel.MendShown second(Mend.SecondBatch second, String lineId) {
        String href = work.batch()
                .version()
                .map(version -> "/products/" + work.product().id() + "/versions/" + version + "/plan?by=mass&mass="
                        + second.batch() + "&blend=" + Wish.coded(work.batch().code()) + "&lessLine="
                        + Wish.coded(lineId) + "&less=" + second.less())
                .orElse("");
        return new Panel.MendShown(
                "A second batch, and blend the two",
                "Make " + Masses.shown(second.batch()) + " g more with " + Masses.shown(second.less())
                        + " g less of it, and join the two: together every line is as the formula asks.",
                List.of(),
                List.of(),
                href.isEmpty() ? Optional.empty() : Optional.of(new Way("Plan the second batch", href, false)),
                "",
                "");
    }

    /** The plan after this way was taken; none where the way is not open any more. */
    Optional<BatchEvent> taken(String lineId, List<Balance> balances, String act) {
        Plan plan = work.plan().orElseThrow();
        Replanning after = new Replanning(plan, work.state());
        String name = plan.line(lineId)
                .map(line -> work.cards().name(line.materialKey()))
                .orElse("");
        for (Mend mend : of(lineId, balances)) {
            if (mend instanceof Mend.LargerBatch larger && act.equals("larger")) {
                return Optional.of(
                        after.larger(larger, "too much " + name + " was poured, so the batch is made larger"));
            }
            if (mend instanceof Mend.ScalePhase scale && act.equals("scale")) {
                String phase = plan.line(lineId).orElseThrow().phaseId();
                return Optional.of(
                        after.scaled(scale, phase, "too much " + name + " was poured, so its phase is made larger"));
            }
        }
        return Optional.empty();
    }

    private Panel.MendShown strike(Mend.Strike strike) {
        String query = Wish.query(vessel, Doing.STRIKE, "entry", Integer.toString(strike.entry()));
        return new Panel.MendShown(
                "Typed it wrong",
                "Entry " + strike.entry() + " says " + Masses.shown(strike.mass())
                        + " g. If that much was never poured, strike it and write down the right figure.",
                List.of(),
                List.of(),
                Optional.of(new Way("Strike this entry", work.path() + "/bench" + query, false)),
                "",
                "");
    }

    private static Panel.MendShown say(String title, String says) {
        return new Panel.MendShown(title, says, List.of(), List.of(), Optional.empty(), "", "");
    }

    private List<String> additions(List<Addition> additions) {
        return additions.stream()
                .map(one -> Masses.shown(one.mass()) + " g " + work.cards().name(one.materialKey()))
                .toList();
    }
}
