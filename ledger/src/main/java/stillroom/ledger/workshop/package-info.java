/** Whose workshop it is, and its equipment. */
@org.jspecify.annotations.NullMarked
package stillroom.ledger.workshop;
