/** Products: their briefs, the versions of their formulas, the editor in which formulas are made. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.products;
