/** What the bench knows: totals, usage, compatibility, order of addition, preservation, handling. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.judgement.craft;
