/** A formula made anew: wishes, answers as cards, the trade-off between cost and change. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.reformulation;
