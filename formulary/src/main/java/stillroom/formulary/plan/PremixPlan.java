package stillroom.formulary.plan;

import stillroom.formulary.formula.Line;
import stillroom.science.weighing.Dilution;

/**
 * How a line that its balance cannot weigh is weighed as a premix.
 *
 * @param line what is diluted
 * @param carrier the line out of which the carrier is taken
 * @param dilution one or two steps, in whole steps of the balance
 */
public record PremixPlan(Line line, Line carrier, Dilution dilution) {}
