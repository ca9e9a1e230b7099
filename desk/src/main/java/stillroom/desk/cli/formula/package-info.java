/** Commands that read formula files: what they amount to, their label, their plan. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.cli.formula;
