/** Tests of dosing acids and bases. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.dosing;
