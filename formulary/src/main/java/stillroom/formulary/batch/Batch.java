package stillroom.formulary.batch;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What is fixed about a batch from its first moment; all else is in its log.
 *
 * @param code printed on containers, unique in the workshop
 * @param version the formula version that it is made from; none when weighed free hand
 */
public record Batch(long id, String code, long productId, Optional<Integer> version, LocalDate openedOn) {}
