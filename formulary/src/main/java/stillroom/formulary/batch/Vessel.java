package stillroom.formulary.batch;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.quantity.Grams;

/**
 * A vessel as the log leaves it.
 *
 * @param clean how it was cleaned, empty where it was never made ready
 * @param phases ids of the phases meant for it
 * @param celsius temperature last seen [degrees Celsius]
 * @param combinedInto the vessel into which it was emptied
 * @param asItIs why it is used though it was not sanitised
 */
public record Vessel(
        String name,
        Optional<Grams> tare,
        Optional<Grams> capacity,
        String clean,
        List<String> phases,
        Mixture mixture,
        Optional<Double> celsius,
        Optional<String> combinedInto,
        Optional<String> asItIs) {
    public Vessel {
        phases = List.copyOf(phases);
    }

    static Vessel named(String name) {
        return new Vessel(
                name,
                Optional.empty(),
                Optional.empty(),
                "",
                List.of(),
                Mixture.NONE,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    static Vessel ready(BatchEvent.VesselReady event, Mixture mixture) {
        return new Vessel(
                event.vessel(),
                event.tare(),
                event.capacity(),
                event.clean(),
                event.phases(),
                mixture,
                Optional.empty(),
                Optional.empty(),
                event.asItIs());
    }

    /** What the vessel should weigh with its contents, where its tare is known [g]. */
    public Optional<Grams> expectedGross() {
        return tare.map(empty -> empty.plus(mixture.net()));
    }

    public boolean open() {
        return combinedInto.isEmpty();
    }

    /** The same, for these phases as well. */
    Vessel serving(List<String> more) {
        List<String> all = java.util.stream.Stream.concat(phases.stream(), more.stream())
                .distinct()
                .toList();
        return new Vessel(name, tare, capacity, clean, all, mixture, celsius, combinedInto, asItIs);
    }

    Vessel with(Mixture other) {
        return new Vessel(name, tare, capacity, clean, phases, other, celsius, combinedInto, asItIs);
    }

    Vessel at(Optional<Double> seen) {
        return new Vessel(
                name, tare, capacity, clean, phases, mixture, seen.isPresent() ? seen : celsius, combinedInto, asItIs);
    }

    Vessel emptiedInto(String other) {
        return new Vessel(name, tare, capacity, clean, phases, Mixture.NONE, celsius, Optional.of(other), asItIs);
    }
}
