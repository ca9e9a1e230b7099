/** Everything in one documented JSON file, or as CSV tables, and back. */
@NullMarked
package stillroom.ledger.export;

import org.jspecify.annotations.NullMarked;
