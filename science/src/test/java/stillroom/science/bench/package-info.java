/** Benchmarks; run by a script, never by the check. */
@org.jspecify.annotations.NullMarked
package stillroom.science.bench;
