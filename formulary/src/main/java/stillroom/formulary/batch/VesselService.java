package stillroom.formulary.batch;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.quantity.Grams;

/** Which vessel a phase is worked in: as declared, else where its lines went, else the only one that is open. */
record VesselService(Formula formula, Plan plan, BatchState state) {

    boolean served(Phase phase) {
        return vesselOf(phase).isPresent();
    }

    boolean serves(Vessel vessel, Phase phase) {
        return vesselOf(phase).filter(vessel.name()::equals).isPresent();
    }

    List<Phase> phasesOf(Vessel vessel) {
        return formula.phases().stream().filter(phase -> serves(vessel, phase)).toList();
    }

    Phase firstPhase(Vessel vessel) {
        return phasesOf(vessel).get(0);
    }

    /** Whether a vessel works some phase that comes before this one. */
    boolean servesBefore(Vessel vessel, Phase phase) {
        int here = formula.phases().indexOf(phase);
        return formula.phases().subList(0, here).stream().anyMatch(earlier -> serves(vessel, earlier));
    }

    /** Other open vessels that are part of the work. */
    List<Vessel> othersThan(Vessel vessel) {
        return state.openVessels().stream()
                .filter(other -> !other.name().equals(vessel.name()))
                .filter(other -> !phasesOf(other).isEmpty()
                        || !other.mixture().contents().isEmpty())
                .toList();
    }

    /** The vessel into which the others go: the one that works most of the batch. */
    boolean isMain(Vessel vessel) {
        Optional<Vessel> main = state.openVessels().stream()
                .max(Comparator.comparing(this::planned)
                        .thenComparing(one -> -state.vessels().indexOf(one)));
        return main.filter(one -> one.name().equals(vessel.name())).isPresent();
    }

    private Grams planned(Vessel vessel) {
        List<String> phases = phasesOf(vessel).stream().map(Phase::id).toList();
        return Grams.sum(plan.lines().stream()
                .filter(line -> phases.contains(line.phaseId()))
                .map(line -> line.target())
                .toList());
    }

    private Optional<String> vesselOf(Phase phase) {
        return declared(phase)
                .or(() -> whereItsLinesWent(phase))
                .or(this::onlyOpen)
                .map(this::followed);
    }

    private Optional<String> declared(Phase phase) {
        return state.vessels().stream()
                .filter(vessel -> vessel.phases().contains(phase.id()))
                .map(Vessel::name)
                .findFirst();
    }

    private Optional<String> whereItsLinesWent(Phase phase) {
        List<String> lines = phase.lines().stream().map(line -> line.id()).toList();
        return state.pours().stream()
                .map(Logged::event)
                .filter(pour -> pour.lineId().filter(lines::contains).isPresent())
                .map(BatchEvent.Poured::vessel)
                .findFirst();
    }

    /** A vessel made ready for certain phases does not silently serve others, unless all is together in it by now. */
    private Optional<String> onlyOpen() {
        List<Vessel> open = state.openVessels();
        boolean combined = state.vessels().stream().anyMatch(vessel -> !vessel.open());
        return open.size() == 1 && (combined || open.get(0).phases().isEmpty())
                ? Optional.of(open.get(0).name())
                : Optional.empty();
    }

    /** The vessel in which the contents of this one are now. */
    private String followed(String name) {
        String at = name;
        for (int i = 0; i <= state.vessels().size(); i++) {
            Optional<String> into = state.vessel(at).flatMap(Vessel::combinedInto);
            if (into.isEmpty()) {
                return at;
            }
            at = into.get();
        }
        return at;
    }
}
