/** Premixes: begun from a line that is too little to weigh, weighed like any batch, put on the shelf as a lot. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.batches.premix;
