/** The pages of batches, asked over HTTP: plan, bench, as made, fill. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.batches;
