/** What becomes of the preservatives at the product's pH, as figures and gaps. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.judgement.preservation;
