package stillroom.formulary.rule;

import stillroom.formulary.quantity.Interval;

/**
 * The least water activity at which organisms of a group have been seen to grow.
 *
 * @param organism that needs the least water of those tabled for the group
 * @param least from the driest to the most demanding organism tabled [-]
 */
public record GrowthFigures(Organisms group, String organism, Interval least, String source) {}
