/** The page on which a pH is corrected: sample titration, dose in stages, what follows from it. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.dosing;
