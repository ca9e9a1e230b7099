package stillroom.formulary.judgement.preservation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.evaluation.PreservativeState;
import stillroom.formulary.evaluation.PreservativeState.Standing;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Words;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.rule.Organisms;

/** Gaps by group of organisms, free acids beyond their solubility, and what cannot be reckoned. */
public final class PreservationFindings {
    private static final String TABLES = "tables of inhibitory concentrations, partition and micelles";

    private PreservationFindings() {}

    public static void look(Pot pot, Consumer<Finding> report) {
        Optional<Interval> ph = pot.workingPh();
        if (ph.isEmpty()) {
            noPh(pot, report);
            return;
        }
        List<PreservativeState> states = Preservation.states(pot, ph.get());
        states.stream().filter(PreservativeState::mayCrystallise).forEach(state -> report.accept(crystals(state)));
        if (!states.isEmpty()) {
            gaps(states, ph.get(), report);
            open(states, report);
        }
    }

    private static void noPh(Pot pot, Consumer<Finding> report) {
        if (Preservation.hangsOnPh(pot)) {
            report.accept(new Finding(
                    Finding.Kind.CANNOT_JUDGE,
                    "preservation.ph",
                    TABLES,
                    Pot.lines(pot.ingredients("preservative-annex-v")),
                    List.of(),
                    "How much of the preservatives is undissociated cannot be said: no pH is known, neither read, set"
                            + " nor computed.",
                    "Set the pH band in the brief, or enter a reading."));
        }
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
        List<String> gaps = new ArrayList<>();
        for (Organisms group : Organisms.values()) {
            if (!any(states, group, standing -> standing != Standing.BELOW_ALL)) {
                gaps.add(group.words());
            }
        }
        if (gaps.isEmpty()) {
            return;
        }
        report.accept(new Finding(
                Finding.Kind.LOOK_AT_THIS,
                "preservation.gap",
                "published inhibitory concentrations as tabled; combinations can do more or less",
                lines(states),
                states.stream()
                        .map(state -> figure(
                                state.name() + (state.freeIsAtMost() ? ", free at most" : ", free"),
                                state.freePercent()))
                        .toList(),
                "At pH " + span(ph) + " no preservative reaches a recorded inhibitory concentration against "
                        + Words.list(gaps) + " by itself.",
                "Look at the table of the preservatives; a second one may close the gap. Only a challenge test shows"
                        + " it."));
    }

    private static boolean any(List<PreservativeState> states, Organisms group, Predicate<Standing> wanted) {
        return states.stream()
                .flatMap(state -> state.against().stream())
                .anyMatch(one -> one.group() == group && wanted.test(one.standing()));
    }

    /** What is missing, one line for all preservatives. */
    private static void open(List<PreservativeState> states, Consumer<Finding> report) {
        List<PreservativeState> open =
                states.stream().filter(PreservativeState::freeIsAtMost).toList();
        if (!open.isEmpty()) {
            report.accept(new Finding(
                    Finding.Kind.CANNOT_JUDGE,
                    "preservation.losses",
                    TABLES,
                    lines(open),
                    open.stream()
                            .map(state -> figure(state.name() + ", free at most", state.freePercent()))
                            .toList(),
                    "How much of " + Words.list(names(open)) + " is free in the water is known only as an upper end: "
                            + Words.list(open.stream()
                                    .map(PreservativeState::note)
                                    .distinct()
                                    .toList())
                            + ".",
                    "Count on less than that. Only a challenge test shows what is left."));
        }
        List<PreservativeState> bare =
                states.stream().filter(state -> state.against().isEmpty()).toList();
        if (!bare.isEmpty()) {
            report.accept(new Finding(
                    Finding.Kind.CANNOT_JUDGE,
                    "preservation.figures",
                    TABLES,
                    lines(bare),
                    List.of(),
                    "No published inhibitory concentration is recorded for " + Words.list(names(bare)) + ".",
                    "Ask its supplier for figures by group of organisms."));
        }
    }

    private static List<String> names(List<PreservativeState> states) {
        return states.stream().map(PreservativeState::name).toList();
    }

    private static List<String> lines(List<PreservativeState> states) {
        return states.stream()
                .flatMap(state -> state.lines().stream())
                .distinct()
                .toList();
    }

    private static Figure figure(String name, Interval percent) {
        return new Figure(name, percent.low(), percent.middle(), percent.high(), "%", "of the water phase", List.of());
    }

    private static String span(Interval ph) {
        return ph.isPoint() ? Words.figure(ph.low()) : Words.figure(ph.low()) + " to " + Words.figure(ph.high());
    }
}
