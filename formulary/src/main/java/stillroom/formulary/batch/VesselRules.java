package stillroom.formulary.batch;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.Problem;
import stillroom.formulary.hygiene.Standing;
import stillroom.formulary.quantity.Grams;

/** What speaks against an entry that concerns a vessel. */
record VesselRules(BatchState state) {

    List<Problem> inUse(String field, String name) {
        Optional<Vessel> vessel = state.vessel(name);
        if (vessel.isEmpty()) {
            return List.of(new Problem(field, "No vessel called " + name + " was made ready."));
        }
        return vessel.get()
                .combinedInto()
                .map(into -> List.of(new Problem(field, name + " was emptied into " + into + ".")))
                .orElse(List.of());
    }

    List<Problem> ready(BatchEvent.VesselReady event) {
        List<Problem> problems = new ArrayList<>();
        if (event.vessel().isBlank()) {
            problems.add(new Problem("vessel", "Give the vessel a name."));
        }
        boolean holdsSomething = state.vessel(event.vessel())
                .filter(vessel -> vessel.mixture().net().signum() > 0)
                .isPresent();
        if (holdsSomething) {
            problems.add(new Problem("vessel", event.vessel() + " is in use and not empty."));
        }
        if (event.tare().filter(tare -> tare.signum() < 0).isPresent()) {
            problems.add(new Problem("tare", "A tare is not less than 0 g."));
        }
        if (event.capacity().filter(capacity -> capacity.signum() <= 0).isPresent()) {
            problems.add(new Problem("capacity", "A vessel holds more than 0 g."));
        }
        if (event.clean().isBlank() && !reasoned(event)) {
            problems.add(new Problem("clean", "Say how it was cleaned, or why it is used as it is."));
        }
        return problems;
    }

    /** A vessel on the workshop's list is sanitised, or it is said why it is used as it is. */
    static List<Problem> sanitised(BatchEvent.VesselReady event, BenchFacts facts) {
        return facts
                .standing(event.vessel())
                .filter(standing -> !standing.sanitised() && !reasoned(event))
                .map(standing ->
                        new Problem("asItIs", notSanitised(standing) + " Sanitise it, or say why it is used as it is."))
                .stream()
                .toList();
    }

    /** Whether it is said why the vessel is used as it is. */
    private static boolean reasoned(BatchEvent.VesselReady event) {
        return event.asItIs().filter(why -> !why.isBlank()).isPresent();
    }

    static String notSanitised(Standing standing) {
        String held = standing.lastUse()
                .filter(use -> standing.state() == Standing.State.DIRTY)
                .map(use -> ": it last held " + use.product() + ", batch " + use.batchCode())
                .orElse("");
        return standing.tool().name() + " is not sanitised (" + standing.state().words() + held + ").";
    }

    List<Problem> weighedBack(BatchEvent.VesselWeighed event) {
        List<Problem> problems = new ArrayList<>(inUse("vessel", event.vessel()));
        state.vessel(event.vessel()).ifPresent(vessel -> {
            if (vessel.tare().isEmpty()) {
                problems.add(new Problem(
                        "vessel", "No tare of " + event.vessel() + " is noted, so its gross weight tells nothing."));
            } else if (event.gross().compareTo(vessel.tare().get()) < 0) {
                problems.add(new Problem(
                        "gross",
                        event.gross() + " g is less than the empty vessel ("
                                + vessel.tare().get() + " g)."));
            }
        });
        return problems;
    }

    List<Problem> takenOut(String name, Grams mass) {
        List<Problem> problems = new ArrayList<>(inUse("vessel", name));
        if (mass.signum() <= 0) {
            problems.add(new Problem("mass", "What is taken out weighs more than 0 g."));
        }
        Grams held = held(name);
        if (problems.isEmpty() && mass.compareTo(held) > 0) {
            problems.add(new Problem("mass", mass + " g is more than is in " + name + " (" + shown(held) + " g)."));
        }
        return problems;
    }

    /** Scales disagree by a little, so more than the book holds asks for a reason and no more. */
    List<Problem> filled(BatchEvent.Filled event) {
        List<Problem> problems = new ArrayList<>(inUse("vessel", event.vessel()));
        if (event.pack().isBlank()) {
            problems.add(new Problem("pack", "Name the container."));
        }
        if (event.containers() < 1) {
            problems.add(new Problem("containers", "At least one container is filled."));
        }
        if (event.total().signum() <= 0) {
            problems.add(new Problem("total", "What was filled weighs more than 0 g."));
        }
        if (event.retained().filter(mass -> mass.signum() < 0).isPresent()) {
            problems.add(new Problem("retained", "What is retained is not less than 0 g."));
        }
        Grams out = event.total().plus(event.retained().orElse(Grams.ZERO));
        Grams held = held(event.vessel());
        if (problems.isEmpty() && event.note().isBlank() && out.compareTo(held) > 0) {
            problems.add(new Problem(
                    "total",
                    out + " g is more than the " + shown(held) + " g in " + event.vessel()
                            + "; say in the note how that came about."));
        }
        return problems;
    }

    private Grams held(String name) {
        return state.vessel(name).map(vessel -> vessel.mixture().net()).orElse(Grams.ZERO);
    }

    static String shown(Grams mass) {
        return new Grams(mass.value().setScale(3, RoundingMode.HALF_EVEN)).toString();
    }
}
