package stillroom.formulary.material;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.quantity.Interval;

/**
 * What a law, a preservative or the skin sees: one chemical or botanical entity under one INCI name.
 *
 * @param key stable key, lower case with hyphens, such as {@code sodium-benzoate}
 * @param inciName as labels write it
 * @param casNumbers none where no number exists
 * @param molarMassGramsPerMol where it is one defined chemical, or the usual mean of a surfactant's homologues
 * @param charge class of a surfactant or polymer, else NONE
 * @param surfactant whether its mass counts as active matter
 * @param acidKey key into the table of acid constants where it takes part in the pH
 * @param tags plain words that rules look for, such as {@code humectant}, {@code oil}, {@code amine}, {@code colourant}
 * @param source where these facts were read, or "from memory"
 * @param parent what a salt or ester is counted as, and the ion that it brings
 * @param hlb Griffin's HLB where it applies (non-ionic, mostly ethoxylated); empty means that it does not apply
 * @param requiredHlb of an oil for oil-in-water emulsions; a rule of thumb with a range
 * @param chargeMolPerKilogram permanent charge of an ionic surfactant or polymer [mol of charge per kg]
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
        String source,
        Optional<Parent> parent,
        Optional<Interval> hlb,
        Optional<Interval> requiredHlb,
        Optional<Double> chargeMolPerKilogram) {
    public Substance {
        casNumbers = List.copyOf(casNumbers);
        tags = List.copyOf(tags);
    }

    /** A substance without parent, HLB or charge figure. */
    public Substance(
            String key,
            String inciName,
            List<String> casNumbers,
            Optional<Double> molarMassGramsPerMol,
            ChargeClass charge,
            boolean surfactant,
            Optional<String> acidKey,
            List<String> tags,
            String source) {
        this(
                key,
                inciName,
                casNumbers,
                molarMassGramsPerMol,
                charge,
                surfactant,
                acidKey,
                tags,
                source,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    public boolean is(String tag) {
        return tags.contains(tag);
    }
}
