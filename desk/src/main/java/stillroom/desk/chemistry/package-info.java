/** Pages on the chemistry of one version: what keeps it, and its surfactants, emulsion and charge. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.chemistry;
