package stillroom.desk.batches;

import stillroom.desk.shell.Format;
import stillroom.formulary.batch.NextAction;

/** Says what is still to be done, in a few words that fit on a vessel's card. */
public final class ActionWords {
    private final Cards cards;
    private final java.time.ZoneId zone;

    public ActionWords(BatchWork work) {
        this.cards = work.cards();
        this.zone = work.desk().zone();
    }

    public String of(NextAction action) {
        if (action instanceof NextAction.Weigh weigh) {
            String grams = Format.grams(weigh.poured().isZero() ? weigh.line().target() : weigh.open());
            return "Weigh " + grams + " g " + (weigh.poured().isZero() ? "" : "more ")
                    + name(weigh.line().materialKey());
        }
        if (action instanceof NextAction.SettleOver over) {
            return name(over.line().materialKey()) + ": " + Format.grams(over.over()) + " g over";
        }
        if (action instanceof NextAction.AddToReading add) {
            return adding(add);
        }
        if (action instanceof NextAction.DoStep step) {
            return step.step().doing();
        }
        if (action instanceof NextAction.Combine combine) {
            return "Put " + combine.from() + " into " + combine.into();
        }
        if (action instanceof NextAction.WaitFor wait) {
            return "Wait for " + wait.vessel();
        }
        if (action instanceof NextAction.Correct correct) {
            return PhWords.outside(correct.standing()) + ": correct";
        }
        if (action instanceof NextAction.TakeOut out) {
            return "Throw away " + Masses.shown(out.mass()) + " g of " + out.phaseName();
        }
        if (action instanceof NextAction.ReadPh) {
            return "Read the pH: it was corrected since";
        }
        return ofBatch(action);
    }

    private String adding(NextAction.AddToReading add) {
        String name = name(add.line().materialKey());
        return add.unread()
                ? name + ": " + Format.grams(add.poured()) + " g is in, "
                        + (add.line().target().isZero()
                                ? ""
                                : Format.grams(add.line().target()) + " g expected; ")
                        + "read now"
                : "Add " + name + " up to the reading";
    }

    private String ofBatch(NextAction action) {
        if (action instanceof NextAction.ReadyVessel ready) {
            return "Make a vessel ready for " + ready.phaseName();
        }
        if (action instanceof NextAction.LookAgain look) {
            return "Look again, due " + Format.moment(look.due(), zone);
        }
        if (action instanceof NextAction.LetRest) {
            return "Let it rest";
        }
        if (action instanceof NextAction.Fill fill) {
            return "Fill from " + fill.vessel();
        }
        return "Release or reject";
    }

    private String name(String materialKey) {
        return cards.name(materialKey);
    }
}
