/** Reading the reference tables that lie in the program's own jar: the only place of this module that opens anything. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.reference;
