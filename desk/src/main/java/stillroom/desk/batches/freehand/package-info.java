/** Beginning a batch at the bench, without a formula. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.batches.freehand;
