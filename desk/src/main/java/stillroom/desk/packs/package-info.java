/** Containers and their lots. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.packs;
