/** Raw materials, the substances in them, their cards and their lots. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.material;
