package stillroom.formulary.material;

import java.util.List;
import java.util.Optional;

/**
 * What a law, a preservative or the skin sees: one chemical or botanical entity under one INCI name.
 *
 * @param key stable key, lower case with hyphens, such as {@code sodium-benzoate}
 * @param inciName as labels write it
 * @param casNumbers none where no number exists
 * @param molarMassGramsPerMol where it is one defined chemical
 * @param charge class of a surfactant or polymer, else NONE
 * @param surfactant whether its mass counts as active matter
 * @param acidKey key into the table of acid constants where it takes part in the pH
 * @param tags plain words that rules look for, such as {@code humectant}, {@code oil}, {@code amine}, {@code colourant}
 * @param source where these facts were read, or "from memory"
 */
public record Substance(
        String key,
        String inciName,
        List<String> casNumbers,
        Optional<Double> molarMassGramsPerMol,
        ChargeClass charge,
        boolean surfactant,
        Optional<String> acidKey,
        List<String> tags,
        String source) {
    public Substance {
        casNumbers = List.copyOf(casNumbers);
        tags = List.copyOf(tags);
    }

    public boolean is(String tag) {
        return tags.contains(tag);
    }
}
