package stillroom.formulary.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.Problem;
import stillroom.formulary.material.Lot;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Grams;

/** What speaks against a weighing. */
record PourRules(BatchState state, BenchFacts facts, VesselRules vessels) {
    private static final String REASON_ASKED = "; take another, or say in the note why it is used all the same.";

    List<Problem> problems(BatchEvent.Poured event) {
        List<Problem> problems = new ArrayList<>(vessels.inUse("vessel", event.vessel()));
        problems.addAll(mass(event));
        problems.addAll(line(event));
        problems.addAll(heat(event));
        problems.addAll(clean(event));
        event.lot().ifPresent(code -> problems.addAll(lot(event, code)));
        return problems;
    }

    /** Lots said after the weighing: together they are what was poured, and each is what it is said to be. */
    List<Problem> problems(BatchEvent.LotsNamed event) {
        Optional<BatchEvent.Poured> pour = state.pours().stream()
                .filter(one -> one.number() == event.entry())
                .map(Logged::event)
                .findFirst();
        if (pour.isEmpty()) {
            return List.of(new Problem("entry", "Entry " + event.entry() + " is no weighing that counts."));
        }
        List<Problem> problems = new ArrayList<>();
        Grams together =
                Grams.sum(event.parts().stream().map(BatchEvent.LotPart::mass).toList());
        boolean onePart = event.parts().stream()
                .anyMatch(part -> part.mass().signum() != pour.get().mass().signum());
        if (event.parts().isEmpty() || onePart || !together.equals(pour.get().mass())) {
            problems.add(new Problem(
                    "parts",
                    "The parts are " + together + " g together, the weighing was "
                            + pour.get().mass() + " g."));
        }
        event.parts()
                .forEach(part -> lot(pour.get(), part.lot()).forEach(problem -> {
                    if (event.reason().isBlank() || !problem.sentence().endsWith(REASON_ASKED)) {
                        problems.add(problem);
                    }
                }));
        return problems;
    }

    private List<Problem> mass(BatchEvent.Poured event) {
        Grams mass = event.mass();
        if (mass.isZero()) {
            return List.of(new Problem("mass", "0 g is no weighing."));
        }
        Optional<Balance> balance = facts.balance(event.balance());
        if (balance.isPresent() && mass.abs().compareTo(balance.get().maximum()) > 0) {
            return List.of(new Problem(
                    "mass",
                    mass.abs() + " g is above the maximum of " + event.balance() + " ("
                            + balance.get().maximum() + " g)."));
        }
        return mass.signum() < 0 ? takenBack(event) : List.of();
    }

    private List<Problem> takenBack(BatchEvent.Poured event) {
        Grams held = state.vessel(event.vessel())
                .map(vessel -> vessel.mixture().of(event.materialKey()))
                .orElse(Grams.ZERO);
        return event.mass().abs().compareTo(held) > 0
                ? List.of(new Problem(
                        "mass",
                        "Only " + VesselRules.shown(held) + " g of it is in " + event.vessel()
                                + "; more cannot be taken back."))
                : List.of();
    }

    /** The first pour into a vessel whose sanitising has run out since it was made ready. */
    private List<Problem> clean(BatchEvent.Poured event) {
        Optional<Vessel> vessel = state.vessel(event.vessel());
        boolean first = vessel.filter(one ->
                        one.mixture().contents().isEmpty() && one.asItIs().isEmpty())
                .isPresent();
        if (!first || !event.note().isBlank()) {
            return List.of();
        }
        return facts
                .standing(event.vessel())
                .filter(standing -> !standing.sanitised())
                .map(standing -> new Problem(
                        "note",
                        VesselRules.notSanitised(standing)
                                + " Make it ready again, or say here why it is used as it is."))
                .stream()
                .toList();
    }

    private List<Problem> heat(BatchEvent.Poured event) {
        if (event.mass().signum() <= 0 || !event.note().isBlank()) {
            return List.of();
        }
        Optional<Double> celsius = state.vessel(event.vessel()).flatMap(Vessel::celsius);
        return facts
                .book()
                .material(event.materialKey())
                .flatMap(card -> HotPour.limitBelow(celsius, card))
                .map(limit -> new Problem(
                        "note",
                        event.vessel() + " was last seen at " + HotPour.whole(celsius.orElseThrow())
                                + " °C, and this bears " + HotPour.whole(limit)
                                + " °C. Let it cool and log the temperature, or say here why it goes in all the same."))
                .stream()
                .toList();
    }

    private List<Problem> line(BatchEvent.Poured event) {
        if (event.lineId().isEmpty() || state.plan().isEmpty()) {
            return List.of();
        }
        Optional<PlannedLine> line = state.plan().get().line(event.lineId().get());
        if (line.isEmpty()) {
            return List.of(new Problem("lineId", "The plan has no such line."));
        }
        boolean other = !line.get().materialKey().equals(event.materialKey());
        return other && event.note().isBlank()
                ? List.of(new Problem(
                        "materialKey", "The line asks for another material; say in the note why this one is poured."))
                : List.of();
    }

    private List<Problem> lot(BatchEvent.Poured event, String code) {
        Optional<Lot> lot = facts.lot(code);
        if (lot.isEmpty()) {
            return List.of(new Problem(
                    "lot", "No lot " + code + " is booked; leave the lot open and count later, or book it first."));
        }
        if (!lot.get().materialKey().equals(event.materialKey())) {
            return List.of(new Problem("lot", "Lot " + code + " is another material."));
        }
        // What is taken back comes from the vessel, whatever has become of its lot.
        return event.mass().signum() > 0 && event.note().isBlank() ? doubt(lot.get()) : List.of();
    }

    private List<Problem> doubt(Lot lot) {
        if (lot.state() == Lot.State.QUARANTINE) {
            return List.of(reasonAsked("Lot " + lot.code() + " is in quarantine"));
        }
        if (lot.retestDueOn(facts.today()) && !lot.expiredOn(facts.today())) {
            return List.of(reasonAsked("Lot " + lot.code() + " was to be tested again by "
                    + lot.retest().map(Object::toString).orElse("")));
        }
        if (lot.expiredOn(facts.today())) {
            return List.of(reasonAsked("Lot " + lot.code() + " expired on "
                    + lot.expires().map(Object::toString).orElse("")));
        }
        return facts.premix(lot.code()).filter(Hold::over).stream()
                .map(hold -> reasonAsked(hold.says()))
                .toList();
    }

    private static Problem reasonAsked(String fact) {
        return new Problem("lot", fact + REASON_ASKED);
    }
}
