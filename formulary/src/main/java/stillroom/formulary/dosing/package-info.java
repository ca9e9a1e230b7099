/** Correcting a pH at the bench: from what the log and the cards say to a dosing task, and from a dose to what follows. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.dosing;
