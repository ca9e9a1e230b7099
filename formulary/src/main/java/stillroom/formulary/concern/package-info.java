/** What concerns a batch as a whole: stops, where its units went, what was said of them, what its record refers to. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.concern;
