/** A formula made anew within bands. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.reformulation;
