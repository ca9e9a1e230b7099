/** Labels as the maker set them up, one for each formula version. */
@org.jspecify.annotations.NullMarked
package stillroom.ledger.label;
