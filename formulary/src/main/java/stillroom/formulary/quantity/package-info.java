/** What people type and weigh: exact decimals with their unit in the type. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.quantity;
