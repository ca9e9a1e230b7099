package stillroom.desk.demonstration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.formula.Step;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

/** Writes a formula down as one reads it: phase, lines, steps. Ids follow from the order: line a1, step a-s1. Not thread-safe. */
final class Recipe {
    private final List<Phase> phases = new ArrayList<>();

    /** Begins a phase; what follows belongs to it. */
    Recipe phase(String id, String name) {
        phases.add(new Phase(id, name, List.of(), List.of()));
        return this;
    }

    Recipe line(String percent, String material, String why) {
        return line(Amount.fixed(percent), material, why);
    }

    Recipe toHundred(String material, String why) {
        return line(new Amount.ToHundred(), material, why);
    }

    /** @param range lowest, expected and highest percentage */
    Recipe toReading(ReadingKind reading, List<String> range, String material, String why) {
        return line(
                new Amount.ToReading(reading, Percent.of(range.get(1)), PercentRange.of(range.get(0), range.get(2))),
                material,
                why);
    }

    /** Adds a step; {@link #at}, {@link #until} and the like then say more about it. */
    Recipe step(String doing) {
        Phase phase = last();
        List<Step> steps = new ArrayList<>(phase.steps());
        String id = phase.id() + "-s" + (steps.size() + 1);
        steps.add(new Step(id, doing, Optional.empty(), "", Optional.empty(), "", ""));
        return replace(new Phase(phase.id(), phase.name(), phase.lines(), steps));
    }

    Recipe at(double celsius) {
        Step s = lastStep();
        return replace(
                new Step(s.id(), s.doing(), Optional.of(celsius), s.speed(), s.minutes(), s.seeIt(), s.caution()));
    }

    Recipe stirring(String speed) {
        Step s = lastStep();
        return replace(new Step(s.id(), s.doing(), s.celsius(), speed, s.minutes(), s.seeIt(), s.caution()));
    }

    Recipe minutes(double minutes) {
        Step s = lastStep();
        return replace(
                new Step(s.id(), s.doing(), s.celsius(), s.speed(), Optional.of(minutes), s.seeIt(), s.caution()));
    }

    Recipe until(String seeIt) {
        Step s = lastStep();
        return replace(new Step(s.id(), s.doing(), s.celsius(), s.speed(), s.minutes(), seeIt, s.caution()));
    }

    Recipe caution(String caution) {
        Step s = lastStep();
        return replace(new Step(s.id(), s.doing(), s.celsius(), s.speed(), s.minutes(), s.seeIt(), caution));
    }

    Formula formula() {
        return new Formula(phases);
    }

    private Recipe line(Amount amount, String material, String why) {
        Phase phase = last();
        List<Line> lines = new ArrayList<>(phase.lines());
        lines.add(new Line(phase.id() + (lines.size() + 1), material, amount, why));
        return replace(new Phase(phase.id(), phase.name(), lines, phase.steps()));
    }

    private Phase last() {
        return phases.get(phases.size() - 1);
    }

    private Step lastStep() {
        List<Step> steps = last().steps();
        return steps.get(steps.size() - 1);
    }

    private Recipe replace(Step step) {
        List<Step> steps = new ArrayList<>(last().steps());
        steps.set(steps.size() - 1, step);
        return replace(new Phase(last().id(), last().name(), last().lines(), steps));
    }

    private Recipe replace(Phase phase) {
        phases.set(phases.size() - 1, phase);
        return this;
    }
}
