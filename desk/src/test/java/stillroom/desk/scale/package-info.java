/** Tests of the weight as a balance sends it. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.scale;
