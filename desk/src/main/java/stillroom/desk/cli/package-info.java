/** Commands that read from standard input and answer on standard output. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.cli;
