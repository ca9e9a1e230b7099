/** What was really made, held against the formula, judged again, and carried into a new version. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.batches.made;
