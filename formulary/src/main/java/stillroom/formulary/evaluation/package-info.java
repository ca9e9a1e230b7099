/** What a formula, or what was really made, amounts to: composition, figures and findings. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.evaluation;
