/** Sets of trials: which lines of a formula vary, in which runs, and what was measured of each. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.trial;
