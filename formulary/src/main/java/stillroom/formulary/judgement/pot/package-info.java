/** Trade materials opened into substances, and the figures that follow from them. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.judgement.pot;
