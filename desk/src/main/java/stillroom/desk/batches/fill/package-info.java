/** Filling containers, yield, and the decision to release or reject. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.batches.fill;
