/** Tests of the pages that look into a version. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.chemistry;
