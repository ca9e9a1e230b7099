/** Records that are kept whole under a key, each kind in its own drawer. */
@NullMarked
package stillroom.ledger.document;

import org.jspecify.annotations.NullMarked;
