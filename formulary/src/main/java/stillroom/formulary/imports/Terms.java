package stillroom.formulary.imports;

import java.util.Optional;
import java.util.function.Predicate;

/**
 * On what terms a sheet is read.
 *
 * @param mark its decimal mark, where it is known
 * @param knownName whether a text is the name of a material that exists
 */
record Terms(Guidance guidance, Optional<Mark> mark, Predicate<String> knownName) {}
