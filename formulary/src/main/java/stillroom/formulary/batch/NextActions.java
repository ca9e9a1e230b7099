package stillroom.formulary.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.plan.Plan;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Interval;

/**
 * What is still to be done, per vessel in the order of the procedure, and for the batch as a whole. The first of each
 * list is what comes next.
 *
 * @param vessels by name of the vessel; open vessels only
 * @param batch what concerns no single vessel
 */
public record NextActions(Map<String, List<NextAction>> vessels, List<NextAction> batch) {
    public NextActions {
        vessels = Map.copyOf(vessels);
        batch = List.copyOf(batch);
    }

    public Optional<NextAction> next(String vessel) {
        return vessels.getOrDefault(vessel, List.of()).stream().findFirst();
    }

    /**
     * For a planned batch.
     *
     * @param phBand of the product
     */
    public static NextActions of(Formula formula, Plan plan, BatchState state, Optional<Interval> phBand) {
        if (state.decision().isPresent()) {
            return new NextActions(Map.of(), List.of());
        }
        PhWork pH = new PhWork(state, phBand);
        VesselService service = new VesselService(formula, plan, state);
        OpenWork work = new OpenWork(formula, plan, state, pH);
        Map<String, List<NextAction>> vessels = new TreeMap<>();
        for (Vessel vessel : state.openVessels()) {
            List<NextAction> here = new ArrayList<>(inVessel(vessel, formula, service, work));
            if (service.isMain(vessel)) {
                pH.outsideTheFormula(formula, vessel.name()).ifPresent(here::add);
            }
            vessels.put(vessel.name(), here);
        }
        vessels.putAll(awaited(vessels));
        List<NextAction> batch = new ArrayList<>(unserved(formula, service, work));
        boolean done = batch.isEmpty() && vessels.values().stream().allMatch(List::isEmpty);
        batch.addAll(whole(state, done, pH));
        return new NextActions(vessels, batch);
    }

    /** For a batch weighed free hand: nothing but the pH is prescribed until it can be filled. */
    public static NextActions freeHand(BatchState state, Optional<Interval> phBand) {
        if (state.decision().isPresent()) {
            return new NextActions(Map.of(), List.of());
        }
        PhWork pH = new PhWork(state, phBand);
        List<Vessel> open = state.openVessels();
        boolean single = open.size() == 1;
        Optional<NextAction> asked =
                single ? pH.outsideTheFormula(Formula.EMPTY, open.get(0).name()) : Optional.empty();
        Map<String, List<NextAction>> vessels =
                asked.map(action -> Map.of(open.get(0).name(), List.of(action))).orElse(Map.of());
        return new NextActions(vessels, whole(state, single && asked.isEmpty(), pH));
    }

    /** A vessel with nothing left to do that another one waits for goes into that one now; later if that is not ready. */
    private static Map<String, List<NextAction>> awaited(Map<String, List<NextAction>> vessels) {
        Map<String, List<NextAction>> awaited = new TreeMap<>();
        vessels.forEach((into, actions) -> {
            boolean now = true;
            for (NextAction action : actions) {
                if (action instanceof NextAction.Combine combine
                        && vessels.getOrDefault(combine.from(), List.of()).isEmpty()) {
                    awaited.put(combine.from(), List.of(now ? combine : new NextAction.WaitFor(into)));
                }
                now = now && action instanceof NextAction.Combine;
            }
        });
        return awaited;
    }

    private static List<NextAction> inVessel(Vessel vessel, Formula formula, VesselService service, OpenWork work) {
        List<NextAction> actions = new ArrayList<>();
        boolean first = true;
        for (Phase phase : formula.phases()) {
            if (!service.serves(vessel, phase)) {
                continue;
            }
            if (!first) {
                actions.addAll(otherVesselsFirst(vessel, phase, service, work));
            }
            actions.addAll(work.of(phase, vessel.name()));
            first = false;
        }
        if (service.isMain(vessel)) {
            service.othersThan(vessel).stream()
                    .filter(other -> actions.stream().noneMatch(action -> concerns(action, other)))
                    .forEach(other -> actions.add(joining(other, vessel, service, work)));
        }
        return actions;
    }

    /** Before a later phase goes in, the earlier phases of other vessels have to be in. */
    private static List<NextAction> otherVesselsFirst(
            Vessel vessel, Phase phase, VesselService service, OpenWork work) {
        return service.othersThan(vessel).stream()
                .filter(other -> service.servesBefore(other, phase))
                .filter(other -> !service.servesBefore(other, service.firstPhase(vessel)) || service.isMain(vessel))
                .map(other -> joining(other, vessel, service, work))
                .toList();
    }

    private static NextAction joining(Vessel other, Vessel into, VesselService service, OpenWork work) {
        boolean finished = service.phasesOf(other).stream()
                .allMatch(phase -> work.of(phase, "").isEmpty());
        return finished ? Combining.of(other, into, service.phasesOf(other)) : new NextAction.WaitFor(other.name());
    }

    private static boolean concerns(NextAction action, Vessel other) {
        return (action instanceof NextAction.WaitFor wait && wait.vessel().equals(other.name()))
                || (action instanceof NextAction.Combine combine
                        && combine.from().equals(other.name()));
    }

    /** Only the first phase without a vessel is named: later ones may well go into one that is in use. */
    private static List<NextAction> unserved(Formula formula, VesselService service, OpenWork work) {
        return formula.phases().stream()
                .filter(phase -> !service.served(phase) && !work.of(phase, "").isEmpty())
                .limit(1)
                .<NextAction>map(phase -> new NextAction.ReadyVessel(phase.id(), phase.name()))
                .toList();
    }

    private static List<NextAction> whole(BatchState state, boolean workDone, PhWork pH) {
        if (state.rest().isPresent()) {
            BatchEvent.RestBegun rest = state.rest().get().event();
            return List.of(new NextAction.LookAgain(rest.due(), rest.lookFor()));
        }
        List<NextAction> actions = new ArrayList<>();
        if (workDone) {
            actions.addAll(finished(state, pH));
        }
        if (!state.fills().isEmpty()) {
            actions.add(new NextAction.Decide());
        }
        return actions;
    }

    /** A product with a pH rests before it is filled, if it never did; a balm is filled while it is hot. */
    private static List<NextAction> finished(BatchState state, PhWork pH) {
        List<Vessel> full = state.openVessels().stream()
                .filter(vessel -> vessel.mixture().net().compareTo(Grams.ZERO) > 0)
                .toList();
        List<NextAction> actions = new ArrayList<>();
        boolean restFirst = !state.rested() && state.fills().isEmpty() && pH.insideAsRead();
        full.stream().limit(restFirst ? 1 : 0).forEach(vessel -> actions.add(new NextAction.LetRest(vessel.name())));
        full.forEach(vessel ->
                actions.add(new NextAction.Fill(vessel.name(), vessel.mixture().net())));
        return actions;
    }
}
