/** Products, their briefs, and formulas: phases of lines in percent with a procedure. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.formula;
