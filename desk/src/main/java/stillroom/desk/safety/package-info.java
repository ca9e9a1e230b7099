/** The assessor's table of a version: exposure and margin of safety by constituent, and what is entered for it. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.safety;
