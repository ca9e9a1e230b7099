package stillroom.ledger.batch;

import java.util.List;

/**
 * One page of a list of batches, newest first.
 *
 * @param total how many there are over all pages
 */
public record BatchPage(List<BatchRow> rows, int total) {
    public BatchPage {
        rows = List.copyOf(rows);
    }
}
