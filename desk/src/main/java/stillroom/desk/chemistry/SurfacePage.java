package stillroom.desk.chemistry;

import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;

/**
 * Surfactants, phases, HLB and net charge of a version.
 *
 * @param activeMatter by charge class
 * @param hlb, required figures in words, or why they are not known
 * @param choices emulsifiers with an HLB, those of the formula first
 * @param pair what the chosen pair comes to; empty before one is chosen
 * @param ph at which charges are counted, in words
 */
public record SurfacePage(
        Frame frame,
        Studied of,
        List<Row> activeMatter,
        String ratio,
        String mildness,
        List<Row> phases,
        String hlb,
        String hlbHow,
        String required,
        String requiredHow,
        List<Row> emulsifiers,
        Typed typed,
        List<Choice> choices,
        List<String> pair,
        List<Charge> charges,
        String netCharge,
        String ph) {
    public SurfacePage {
        activeMatter = List.copyOf(activeMatter);
        phases = List.copyOf(phases);
        emulsifiers = List.copyOf(emulsifiers);
        choices = List.copyOf(choices);
        pair = List.copyOf(pair);
        charges = List.copyOf(charges);
    }

    /** A name, a figure in words, and what it rests on. */
    public record Row(String name, String shown, String how) {}

    /** One ionic surfactant or polymer. */
    public record Charge(String name, String kind, String charge, String how) {}
}
