/** Pages of a formula made anew. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.reformulation;
