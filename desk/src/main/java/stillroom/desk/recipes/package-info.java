/** Recipes for others: one page as PDF, or one file that opens in any browser and reckons with the reader's own batch, balance and materials. */
@NullMarked
package stillroom.desk.recipes;

import org.jspecify.annotations.NullMarked;
