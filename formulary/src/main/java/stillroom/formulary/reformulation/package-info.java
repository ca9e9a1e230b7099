/** A formula made anew within bands: a material replaced, a shelf used up, or a goal such as a lower cost pursued. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.reformulation;
