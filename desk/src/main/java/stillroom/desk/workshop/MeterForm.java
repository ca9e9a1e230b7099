package stillroom.desk.workshop;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Input;
import stillroom.formulary.meter.MeterBuffer;
import stillroom.formulary.meter.MeterCalibration;
import stillroom.formulary.meter.PhMeter;
import stillroom.science.meter.BufferTable;
import stillroom.science.meter.ReferenceBuffers;

/** Meters and calibrations as they are typed. */
final class MeterForm {
    private final Input input;

    MeterForm(Input input) {
        this.input = input;
    }

    static List<Choice> buffers(boolean none) {
        List<Choice> choices = new ArrayList<>();
        if (none) {
            choices.add(new Choice("", "None was read"));
        }
        ReferenceBuffers.all().forEach(table -> choices.add(new Choice(table.name(), table.name())));
        choices.add(new Choice("another buffer", "another buffer, its pH typed"));
        return choices;
    }

    Optional<PhMeter> meter() {
        String name = input.required("name", "The name");
        Optional<Double> repeatability = input.number("repeatability", "The repeatability", "0.001", "1");
        Optional<Integer> hours = input.whole("holdsHours", "The hours", 1, 8760);
        return input.isSound()
                ? Optional.of(new PhMeter(name, repeatability.orElse(PhMeter.USUAL_REPEATABILITY), hours))
                : Optional.empty();
    }

    Optional<MeterCalibration> calibration(List<PhMeter> meters, Instant at) {
        String meter = input.text("meter");
        if (meters.stream().noneMatch(one -> one.name().equals(meter))) {
            input.refuse("meter", "This meter is not on record; add it first.");
        }
        String by = input.required("by", "The name of who calibrates");
        Optional<Double> celsius = wanted("celsius", "The temperature of the buffers", "0", "60");
        Optional<MeterBuffer> low = celsius.flatMap(c -> buffer("low", c));
        Optional<MeterBuffer> high = celsius.flatMap(c -> buffer("high", c));
        if (low.isPresent() && high.isPresent() && low.get().pH() >= high.get().pH()) {
            input.refuse("highBuffer", "The second buffer must have a higher pH than the first.");
        }
        Optional<Double> slope = input.number("slope", "The slope", "0", "200");
        Optional<Double> offset = input.number("offset", "The offset", "-500", "500");
        if (slope.isPresent() != offset.isPresent() && input.isSound()) {
            input.refuse("offset", "Type slope and offset both, as the meter shows them, or neither.");
        }
        Optional<MeterBuffer> check =
                input.text("checkBuffer").isEmpty() ? Optional.empty() : celsius.flatMap(c -> buffer("check", c));
        Optional<Double> read =
                check.isEmpty() ? Optional.empty() : wanted("checkRead", "What the meter showed in it", "0", "14");
        if (slope.isEmpty() && check.isEmpty() && input.isSound()) {
            input.refuse(
                    "slope",
                    "Type slope and offset, or a reading in a third buffer: else nothing shows that it is right.");
        }
        return input.isSound() && low.isPresent() && high.isPresent() && celsius.isPresent()
                ? Optional.of(new MeterCalibration(
                        meter,
                        at,
                        by,
                        celsius.get(),
                        low.get(),
                        high.get(),
                        slope,
                        offset,
                        check,
                        read,
                        input.text("note")))
                : Optional.empty();
    }

    private Optional<Double> wanted(String field, String what, String lowest, String highest) {
        Optional<Double> typed = input.number(field, what, lowest, highest);
        return typed.isEmpty() && !input.hasProblem(field) ? input.refuse(field, what + " is missing.") : typed;
    }

    /** The pH typed from the bottle goes before the published table. */
    private Optional<MeterBuffer> buffer(String which, double celsius) {
        String name = input.text(which + "Buffer");
        Optional<Double> typed = input.number(which + "Ph", "The pH of the buffer", "0", "14");
        Optional<LocalDate> expires = input.day(which + "Expires", "The date on the bottle");
        if (input.hasProblem(which + "Ph")) {
            return Optional.empty();
        }
        OptionalDouble table = ReferenceBuffers.all().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .map(one -> at(one, celsius))
                .orElse(OptionalDouble.empty());
        if (typed.isEmpty() && table.isEmpty()) {
            return input.refuse(
                    which + "Ph",
                    "No table on record gives this buffer at that temperature: type its pH from the bottle.");
        }
        return Optional.of(new MeterBuffer(
                name.isEmpty() ? "another buffer" : name,
                input.text(which + "Lot"),
                expires,
                typed.orElseGet(table::getAsDouble)));
    }

    private static OptionalDouble at(BufferTable table, double celsius) {
        OptionalDouble exact = table.pHAt(celsius);
        return exact.isPresent() ? OptionalDouble.of(Math.round(exact.getAsDouble() * 1000) / 1000.0) : exact;
    }
}
