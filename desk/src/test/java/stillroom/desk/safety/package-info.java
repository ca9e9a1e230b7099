/** Tests of the assessor's table. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.safety;
