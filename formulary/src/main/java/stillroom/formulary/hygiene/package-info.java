/** Vessels and tools: how clean they are, and how long what stands in them may stand. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.hygiene;
