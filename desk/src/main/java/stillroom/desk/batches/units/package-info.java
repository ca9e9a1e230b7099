/** What concerns a batch as a whole: stops, where its units are, samples, complaints, documents. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.batches.units;
