/** The batch log, and what it adds up to. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.batch;
