/** Products and the versions of their formulas. */
@org.jspecify.annotations.NullMarked
package stillroom.ledger.formula;
