package stillroom.desk.batches.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Input;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.formula.ReadingKind;

/** Reads the form of a reading, with the conditions without which it cannot be compared with another one. */
final class ReadingReader {
    private final Input input;
    private final Map<String, String> how = new LinkedHashMap<>();

    ReadingReader(Input input) {
        this.input = input;
    }

    Optional<BatchEvent> reading() {
        ReadingKind kind = input.choice("kind", "The kind", ReadingKind.class).orElse(ReadingKind.OTHER);
        Optional<Double> value = value(kind);
        note("measured", measured(kind));
        note("sample temperature", number("sampleCelsius", "The sample temperature", "-40", "250", " °C"));
        note("minutes to stable", number("minutesToStable", "The time until it was stable", "0", "600", ""));
        for (String[] field : CONDITIONS) {
            note(field[1], input.text(field[0]));
        }
        return Optional.of(
                new BatchEvent.ReadingTaken(kind, input.text("vessel"), value, unit(kind), input.text("words"), how));
    }

    /** Fields of the form and what they are called in the log. */
    private static final String[][] CONDITIONS = {
        {"electrode", "electrode"},
        {"instrument", "instrument"},
        {"spindle", "spindle"},
        {"speed", "speed"},
        {"torque", "torque %"},
        {"guard", "guard"},
        {"container", "container"},
        {"seconds", "seconds"},
        {"sampleAge", "age of sample"},
        {"otherWhat", "what"},
    };

    private Optional<Double> value(ReadingKind kind) {
        return switch (kind) {
            case PH -> wanted(input.number("value", "The pH", "0", "14"), "The pH");
            case TEMPERATURE -> wanted(input.number("value", "The temperature", "-40", "250"), "The temperature");
            case VISCOSITY -> input.reading("value", "The figure", "0.001", "100000000");
            case DENSITY -> wanted(input.number("value", "The density", "0.01", "30"), "The density");
            case SHADE, APPEARANCE, ODOUR -> Optional.empty();
            case OTHER -> input.reading("value", "The figure", "-1000000000", "1000000000");
        };
    }

    private Optional<Double> wanted(Optional<Double> value, String what) {
        return value.isEmpty() && !input.hasProblem("value") ? input.refuse("value", what + " is missing.") : value;
    }

    private String unit(ReadingKind kind) {
        return switch (kind) {
            case PH -> "pH";
            case TEMPERATURE -> "°C";
            case DENSITY -> "g/ml";
            case VISCOSITY, OTHER -> input.text("unit");
            case SHADE, APPEARANCE, ODOUR -> "";
        };
    }

    /** Neat, or how much of the product was stirred into water; different dilutions are never compared. */
    private String measured(ReadingKind kind) {
        if (kind != ReadingKind.PH) {
            return "";
        }
        if (!input.text("measured").equals("dilution")) {
            return "neat";
        }
        Optional<java.math.BigDecimal> percent = input.decimal("dilution", "The dilution", "0.1", "99");
        if (percent.isEmpty() && !input.hasProblem("dilution")) {
            input.refuse("dilution", "Say how much of the product is in the water, in percent.");
        }
        return percent.map(p -> p.stripTrailingZeros().toPlainString() + " % in water")
                .orElse("");
    }

    private String number(String field, String what, String lowest, String highest, String unit) {
        return input.decimal(field, what, lowest, highest)
                .map(figure -> figure.stripTrailingZeros().toPlainString() + unit)
                .orElse("");
    }

    private void note(String condition, String said) {
        if (!said.isEmpty()) {
            how.put(condition, said);
        }
    }
}
