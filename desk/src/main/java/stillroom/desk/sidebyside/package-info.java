/** Versions and trials beside each other: formula, composition, evaluation, cost, readings, photographs. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.sidebyside;
