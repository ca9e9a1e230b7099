package stillroom.formulary.plan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;

/**
 * A class: one formula version made by several people at once, each a tiny batch.
 *
 * @param each mass of one set [g]
 * @param step of the balances in the class [g]
 * @param spare what the teacher brings beyond what the sets take [% of it]
 * @param premixes line that comes as a premix, by its id, to the line whose material carries it
 * @param batches one for each set once the class has begun, in the order of the sets
 */
public record ClassOf(
        String title,
        LocalDate day,
        long productId,
        int version,
        int sets,
        Grams each,
        Grams step,
        Percent spare,
        Map<String, String> premixes,
        List<Long> batches) {
    public ClassOf {
        premixes = Map.copyOf(premixes);
        batches = List.copyOf(batches);
    }

    public ClassOf begun(List<Long> opened) {
        return new ClassOf(title, day, productId, version, sets, each, step, spare, premixes, opened);
    }

    /** A mass that one set takes, for all sets with the spare [g]. */
    public Grams forAll(Grams one) {
        return new Grams(one.value()
                .multiply(BigDecimal.valueOf(sets))
                .multiply(BigDecimal.valueOf(100).add(spare.value()))
                .movePointLeft(2));
    }
}
