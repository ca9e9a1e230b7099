/** The gate that words on a label must pass before anything is shown as good or public. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.judgement.claim;
