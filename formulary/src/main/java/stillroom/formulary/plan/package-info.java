/** From percentages to grams on a real balance, with the lots on the shelf. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.plan;
