package stillroom.formulary.judgement.preservation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.evaluation.PreservativeState;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Words;
import stillroom.formulary.quantity.Interval;

/** Gaps by group of organisms, and free acids beyond their solubility. */
public final class PreservationFindings {
    private PreservationFindings() {}

    public static void look(Pot pot, Consumer<Finding> report) {
        Optional<Interval> ph = pot.workingPh();
        if (ph.isEmpty()) {
            return;
        }
        List<PreservativeState> states = Preservation.states(pot, ph.get());
        states.stream().filter(PreservativeState::mayCrystallise).forEach(state -> report.accept(crystals(state)));
        gaps(states, ph.get(), report);
    }

    private static Finding crystals(PreservativeState state) {
        double soluble = state.solubilityPercent().orElseThrow();
        return new Finding(
                Finding.Kind.LOOK_AT_THIS,
                "solubility.free-acid",
                "table of acids and bases, solubility of the free acid",
                state.lines(),
                List.of(
                        figure("Free in the water phase", state.freePercent()),
                        Figure.exactly("Soluble in water", soluble, "%", "near 20 °C")),
                "Up to " + Words.figure(state.freePercent().high()) + " % free " + state.name()
                        + " stands in the water phase, of which about " + Words.figure(soluble)
                        + " % dissolve in water: it may crystallise, above all in the cold.",
                "Raise the pH a little, lower the amount, or bring a glycol.");
    }

    private static void gaps(List<PreservativeState> states, Interval ph, Consumer<Finding> report) {
        if (states.isEmpty()) {
            return;
        }
        List<String> gaps = new ArrayList<>();
        for (PreservativeState.Group group : PreservativeState.Group.values()) {
            boolean reached = states.stream()
                    .flatMap(state -> state.against().stream())
                    .anyMatch(one -> one.group() == group && one.standing() != PreservativeState.Standing.BELOW_ALL);
            if (!reached) {
                gaps.add(group.words());
            }
        }
        if (!gaps.isEmpty()) {
            report.accept(new Finding(
                    Finding.Kind.LOOK_AT_THIS,
                    "preservation.gap",
                    "published inhibitory concentrations as tabled; combinations can do more or less",
                    states.stream()
                            .flatMap(state -> state.lines().stream())
                            .distinct()
                            .toList(),
                    states.stream()
                            .map(state -> figure(state.name() + ", free", state.freePercent()))
                            .toList(),
                    "At pH " + span(ph) + " no preservative reaches a recorded inhibitory concentration against "
                            + Words.list(gaps) + " by itself.",
                    "Look at the table of the preservatives; a second one may close the gap. Only a challenge test shows"
                            + " it."));
        }
    }

    private static Figure figure(String name, Interval percent) {
        return new Figure(name, percent.low(), percent.middle(), percent.high(), "%", "of the water phase", List.of());
    }

    private static String span(Interval ph) {
        return ph.isPoint() ? Words.figure(ph.low()) : Words.figure(ph.low()) + " to " + Words.figure(ph.high());
    }
}
