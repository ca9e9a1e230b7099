/** Containers: what they are, their lots, and whether a filling suits them. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.pack;
