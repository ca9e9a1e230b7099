/** Pages of the trials: which beakers to try, what they gave, and what follows. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.trials;
