/** The bench: what comes next in each vessel, and writing down what was done. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.batches.bench;
