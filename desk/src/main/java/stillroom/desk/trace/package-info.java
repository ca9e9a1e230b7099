/** What something touched, where it is now, and what to do about it. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.trace;
