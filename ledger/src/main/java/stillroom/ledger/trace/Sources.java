package stillroom.ledger.trace;

import java.util.List;

/**
 * What went into a batch, or into a lot made here, all the way back.
 *
 * @param lots by code; those without sources of their own are what was bought
 * @param batchCodes of batches whose bulk or lot went in
 */
public record Sources(List<SourceLot> lots, List<String> batchCodes) {
    public Sources {
        lots = List.copyOf(lots);
        batchCodes = List.copyOf(batchCodes);
    }

    /**
     * One lot.
     *
     * @param materialKey empty where only its code stands in a log
     * @param raw whether it was bought, not made here
     */
    public record SourceLot(String code, String materialKey, String supplier, String supplierLot, boolean raw) {}
}
