/** Keeping the workshop: everything that the maker did, in one file. */
@org.jspecify.annotations.NullMarked
package stillroom.ledger;
