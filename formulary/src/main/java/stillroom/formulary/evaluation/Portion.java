package stillroom.formulary.evaluation;

import stillroom.formulary.material.MassFraction;

/**
 * One material in what is judged, from a formula line or from real pours.
 *
 * @param lineId the line that it stands for; pours without a line carry an id of their own
 * @param phase name of its phase
 * @param materialKey card in the material book
 * @param share mass fraction of the whole as added; a range for lines added up to a reading
 */
public record Portion(String lineId, String phase, String materialKey, MassFraction share) {}
