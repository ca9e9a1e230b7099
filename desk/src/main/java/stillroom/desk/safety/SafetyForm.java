package stillroom.desk.safety;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Input;
import stillroom.formulary.judgement.safety.OwnExposure;
import stillroom.formulary.judgement.safety.PointOfDeparture;
import stillroom.formulary.judgement.safety.PointOfDeparture.Found;
import stillroom.formulary.judgement.safety.SafetyInput;

/** The forms of the assessor's table: read from what was posted, and filled from what is stored. */
final class SafetyForm {
    static final List<Choice> FOUND = Arrays.stream(Found.values())
            .map(found -> new Choice(found.name(), found.words()))
            .toList();
    static final List<Choice> LENGTHS = List.of(
            new Choice("long", "longer than about 28 days"), new Choice("short", "about 28 days, divided by 3"));

    private SafetyForm() {}

    /** What the form says of a substance; empty where something in it cannot be taken. */
    static Optional<SafetyInput> substance(Input input) {
        Optional<PointOfDeparture> departure = departure(input);
        Optional<Double> absorbed = input.number("absorption", "The dermal absorption", "0", "100");
        String source = input.text("absorptionSource");
        if (absorbed.isPresent() && source.isBlank()) {
            input.refuse("absorptionSource", "A dermal absorption needs its source.");
        }
        return input.isSound()
                ? Optional.of(new SafetyInput(departure, absorbed.map(percent -> percent / 100), source))
                : Optional.empty();
    }

    private static Optional<PointOfDeparture> departure(Input input) {
        Optional<Double> dose = input.number("dose", "The dose", "0.000001", "100000");
        Optional<Double> bioavailable = input.number("bioavailable", "The share that reaches the body", "0.1", "100");
        Optional<Double> margin = input.number("margin", "The margin asked for", "1", "100000");
        Found found = input.choice("found", "Kind of dose", Found.class).orElse(Found.NO_ADVERSE_EFFECT);
        String source = input.text("source");
        if (dose.isEmpty()) {
            return Optional.empty();
        }
        if (source.isBlank()) {
            input.refuse("source", "A point of departure needs its source: the opinion or the study.");
        }
        return input.isSound()
                ? Optional.of(new PointOfDeparture(
                        dose.get(),
                        found,
                        input.text("length").equals("short"),
                        bioavailable.orElse(100 * PointOfDeparture.DEFAULT_BIOAVAILABLE) / 100,
                        margin.orElse(PointOfDeparture.DEFAULT_MARGIN),
                        source))
                : Optional.empty();
    }

    /** An exposure of one's own; empty where none is typed or it cannot be taken. */
    static Optional<OwnExposure> exposure(Input input) {
        Optional<Double> figure = input.number("exposure", "The exposure", "0.0001", "10000");
        String source = input.text("exposureSource");
        if (figure.isPresent() && source.isBlank()) {
            input.refuse("exposureSource", "An exposure of your own needs its source.");
        }
        return figure.filter(known -> input.isSound()).map(known -> new OwnExposure(known, source));
    }

    /** What stands in the fields before anything is typed. */
    static Map<String, String> values(SafetyInput stored) {
        Map<String, String> values = new HashMap<>();
        stored.departure().ifPresent(known -> {
            values.put("dose", plain(known.milligramsPerKilogramDay()));
            values.put("found", known.found().name());
            values.put("length", known.shortStudy() ? "short" : "long");
            values.put("bioavailable", plain(known.bioavailableFraction() * 100));
            values.put("margin", plain(known.leastMargin()));
            values.put("source", known.source());
        });
        stored.absorbedFraction().ifPresent(known -> values.put("absorption", plain(known * 100)));
        values.put("absorptionSource", stored.absorptionSource());
        return values;
    }

    static Map<String, String> values(Optional<OwnExposure> stored) {
        return stored.map(known ->
                        Map.of("exposure", plain(known.milligramsPerKilogramDay()), "exposureSource", known.source()))
                .orElse(Map.of());
    }

    private static String plain(double value) {
        return new BigDecimal(value)
                .round(new MathContext(10))
                .stripTrailingZeros()
                .toPlainString();
    }
}
