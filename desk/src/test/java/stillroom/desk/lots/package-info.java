/** The pages of lots. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.lots;
