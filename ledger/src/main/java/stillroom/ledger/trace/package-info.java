/** From a lot, a vessel, a person ... to all that it touched, and back. */
@org.jspecify.annotations.NullMarked
package stillroom.ledger.trace;
