/** The maker's own cards and substances, over the starter library. */
@org.jspecify.annotations.NullMarked
package stillroom.ledger.material;
