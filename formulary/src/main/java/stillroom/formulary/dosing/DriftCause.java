package stillroom.formulary.dosing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.evaluation.SubstanceShare;

/**
 * A known reason for a pH that moves over the days, present in what was made.
 *
 * @param name of the substance or of what happens
 * @param falls whether it makes the pH fall, else climb
 * @param says what happens, one sentence
 */
public record DriftCause(String name, boolean falls, String says) {
    private static final double A_TRACE = 0.001;

    /** Substances (by key) that are known for it. Common practice, no source. */
    private static final List<Known> KNOWN = List.of(
            new Known(
                    List.of("lactic-acid"),
                    "lactic acid",
                    true,
                    "The oligomers of strong lactic acid take up water and set free more acid over days."),
            new Known(
                    List.of("gluconolactone"),
                    "gluconolactone",
                    true,
                    "Gluconolactone opens to gluconic acid over hours to days."),
            new Known(
                    List.of("urea"),
                    "urea",
                    false,
                    "Urea breaks down to ammonia and carbon dioxide, the faster the warmer."),
            new Known(
                    List.of("ascorbic-acid", "sodium-ascorbate"),
                    "ascorbic acid",
                    true,
                    "Ascorbic acid is oxidised by the air; what comes of it is sourer."),
            new Known(
                    List.of("sodium-bicarbonate", "sodium-carbonate", "potassium-carbonate", "potassium-bicarbonate"),
                    "carbonate",
                    false,
                    "Carbon dioxide leaves until the liquid is in balance with the air."));

    private record Known(List<String> keys, String name, boolean falls, String says) {}

    /** Those that are present in more than a trace. */
    public static List<DriftCause> of(List<SubstanceShare> shares) {
        List<DriftCause> found = new ArrayList<>();
        for (Known known : KNOWN) {
            Optional<SubstanceShare> present = shares.stream()
                    .filter(share -> known.keys().contains(share.substance())
                            && share.asAdded().upper() >= A_TRACE)
                    .findFirst();
            present.ifPresent(share -> found.add(new DriftCause(known.name(), known.falls(), known.says())));
        }
        return List.copyOf(found);
    }
}
