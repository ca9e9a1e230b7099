/** The label of a version, and of a batch against it. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.labels;
