package stillroom.desk.batches.premix;

import stillroom.desk.batches.BatchHead;
import stillroom.desk.batches.Who;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/**
 * Putting a premix on the shelf.
 *
 * @param material name of the premix
 * @param planned share of the raw material by the recipe [%], as shown
 * @param made the same as weighed, with what it may be off; empty while nothing is weighed
 * @param mass what there is of it [g], as shown
 * @param lot the lot that it became, empty while it is none
 * @param plan address of the plan for which it is made, empty for none
 */
public record PremixPage(
        Frame frame,
        BatchHead head,
        String material,
        String planned,
        String made,
        String mass,
        String lot,
        String plan,
        String code,
        String keeps,
        Who who,
        String requestId,
        Typed typed,
        String general) {}
