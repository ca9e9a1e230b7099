/** Tests of the commands. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.cli;
