/** Batches: the list, one batch with its log, and what its pages share. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.batches;
