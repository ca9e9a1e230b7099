/** Photographs of a batch: taken in, made small, shown beside each other over time. */
@NullMarked
package stillroom.desk.pictures;

import org.jspecify.annotations.NullMarked;
