/** Dividing a bulk into batches, and joining two. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.batches.bulk;
