/** Exposure and margin of safety as a table for the assessor, never as a verdict. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.judgement.safety;
