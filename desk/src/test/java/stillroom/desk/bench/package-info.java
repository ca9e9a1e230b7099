/** How long pages take. Run by script, never by the checks. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.bench;
