/** Dated copies of the workshop: how they are called, which are kept, and when the next is due. */
@NullMarked
package stillroom.ledger.backup;

import org.jspecify.annotations.NullMarked;
