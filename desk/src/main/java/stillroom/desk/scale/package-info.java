/** The weight as a balance sends it: lines read here or handed on by the browser. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.scale;
