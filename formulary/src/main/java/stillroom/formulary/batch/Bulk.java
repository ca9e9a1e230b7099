package stillroom.formulary.batch;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.batch.BatchEvent.BulkPart;
import stillroom.formulary.quantity.Grams;

/** Dividing a bulk into batches, and joining two: what one batch hands over, another receives with all that is in it. */
public final class Bulk {
    private Bulk() {}

    /**
     * What the other batch enters when it gets this mass out of this vessel; the giving batch enters
     * {@link BatchEvent.HandedOver} with the same mass.
     *
     * @param into vessel of the receiving batch
     */
    public static BatchEvent.BulkReceived of(Vessel from, Grams mass, String fromBatch, String into) {
        Mixture taken = from.mixture().split(mass).taken();
        Map<BulkPart, Grams> sums = new LinkedHashMap<>();
        for (Content content : taken.contents()) {
            sums.merge(key(content), content.mass(), Grams::plus);
        }
        List<BulkPart> parts = new ArrayList<>();
        sums.forEach((key, sum) -> {
            if (sum.signum() > 0) {
                parts.add(new BulkPart(key.materialKey(), key.lot(), key.lineId(), sum));
            }
        });
        return new BatchEvent.BulkReceived(into, fromBatch, parts, taken.lost());
    }

    /** Lines belong to the formula of the batch that is left; a batch of the same formula may keep them. */
    public static BatchEvent.BulkReceived withoutLines(BatchEvent.BulkReceived bulk) {
        List<BulkPart> parts = bulk.parts().stream()
                .map(part -> new BulkPart(part.materialKey(), part.lot(), Optional.empty(), part.mass()))
                .toList();
        return new BatchEvent.BulkReceived(bulk.vessel(), bulk.fromBatch(), parts, bulk.waterLost());
    }

    private static BulkPart key(Content content) {
        return new BulkPart(content.materialKey(), content.lot(), content.lineId(), Grams.ZERO);
    }
}
