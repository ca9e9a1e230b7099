/** The pages of the shelf. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.materials;
