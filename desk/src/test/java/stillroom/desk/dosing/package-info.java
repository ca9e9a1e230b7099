/** Tests of the page on which a pH is corrected. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.dosing;
