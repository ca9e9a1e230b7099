/** From a formula version to grams, lots and a batch that is begun. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.batches.plan;
