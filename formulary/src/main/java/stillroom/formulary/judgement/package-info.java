/** The one pure function from what is in the pot to figures and findings, and what prepares a formula for it. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.judgement;
