package stillroom.desk.batches.bench;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.shell.Input;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchEvent.Poured;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.quantity.Grams;

/** Reads a form of the bench into the event that it means. Problems stand in the input. */
final class ActReader {
    private static final int LONGEST_NAME = 60;

    private final BatchWork work;
    private final Input input;
    private final String vessel;

    ActReader(BatchWork work, Input input) {
        this.work = work;
        this.input = input;
        this.vessel = input.text("vessel");
    }

    /** None where something typed cannot be taken. */
    Optional<BatchEvent> event() {
        Optional<BatchEvent> event = switch (input.text("act")) {
            case "ready" -> ready();
            case "weigh" -> poured(false);
            case "back" -> poured(true);
            case "instead" -> instead();
            case "larger", "scale" -> replanned();
            case "lots" -> lots();
            case "serve" -> Optional.of(new BatchEvent.PhasesGiven(input.text("into"), List.of(input.text("phase"))));
            case "giveup" ->
                Optional.of(new BatchEvent.Decided(
                        BatchEvent.Decision.REJECTED,
                        input.text("by"),
                        input.required("reason", "The reason"),
                        List.of()));
            case "accept" -> accept();
            case "step" -> step();
            case "timer" -> timer();
            case "stop" -> Optional.of(new BatchEvent.TimerStopped(input.text("timer"), input.text("note")));
            case "combine" -> combine();
            case "gross" -> mass("gross", "The weight").map(g -> new BatchEvent.VesselWeighed(vessel, g));
            case "sample" -> sample();
            case "read" -> new ReadingReader(input).reading();
            case "rest" -> rest();
            case "look" -> Optional.of(new BatchEvent.RestEnded(input.text("note")));
            case "note" -> Optional.of(new BatchEvent.Noted(input.required("text", "The note")));
            case "strike" -> strike();
            case "again" -> again();
            default -> input.refuse("act", "This form is not known here; go back and try again.");
        };
        return input.isSound() ? event : Optional.empty();
    }

    private Optional<Grams> mass(String field, String what) {
        Optional<Grams> mass = input.grams(field, what);
        return mass.isEmpty() && !input.hasProblem(field)
                ? input.refuse(field, what + " is missing: type the grams.")
                : mass;
    }

    private String name(String field, String what) {
        String name = input.required(field, what);
        if (name.length() > LONGEST_NAME) {
            input.refuse(field, what + " has " + name.length() + " characters; up to " + LONGEST_NAME + " fit here.");
        }
        return name;
    }

    private Optional<BatchEvent> ready() {
        return Optional.of(new Readying(work, input)
                .event(name("newVessel", "The name of the vessel"), List.copyOf(input.all("phase"))));
    }

    private Optional<BatchEvent> poured(boolean back) {
        Optional<Grams> mass = mass("mass", "The weight");
        String material = input.text("material");
        if (material.isEmpty()) {
            material = work.line(input.text("line"))
                    .map(line -> line.materialKey())
                    .orElse("");
        }
        if (work.book().material(material).isEmpty()
                && work.line(input.text("line")).isEmpty()) {
            return input.refuse("material", "This material is not on the shelf's list.");
        }
        Optional<Purpose> purpose = input.choice("purpose", "The purpose", Purpose.class);
        if (mass.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Poured(
                vessel,
                optional("line"),
                material,
                optional("lot"),
                back ? mass.get().negated() : mass.get(),
                purpose.orElse(Purpose.LINE),
                input.text("balance"),
                input.text("checkedBy"),
                input.text("note"),
                scanned()));
    }

    /** Only the lot that was scanned, not another that was chosen afterwards. */
    private boolean scanned() {
        return !input.text("scanned").isEmpty() && input.text("scanned").equals(input.text("lot"));
    }

    /** In the line's place it counts for the line; by mistake it counts for nothing and the line stays open. */
    private Optional<BatchEvent> instead() {
        Optional<Grams> mass = mass("mass", "The weight");
        boolean mistake = input.text("how").equals("mistake");
        String material = input.text("material");
        if (work.book().material(material).isEmpty()) {
            return input.refuse("material", "This material is not on the shelf's list.");
        }
        String note = input.required("note", "How that came about");
        return mass.map(g -> new Poured(
                vessel,
                mistake ? Optional.empty() : optional("line"),
                material,
                optional("lot"),
                g,
                mistake ? Purpose.MISTAKE : Purpose.LINE,
                input.text("balance"),
                input.text("checkedBy"),
                note));
    }

    private Optional<BatchEvent> replanned() {
        Optional<BatchEvent> after = new Mends(work, vessel)
                .taken(input.text("line"), work.desk().ledger().equipment().balances(), input.text("act"));
        return after.isPresent()
                ? after
                : input.refuse("line", "This way is not open any more; the ways as they are now stand here.");
    }

    /** The one part whose mass is left open is what remains of the weighing. */
    private Optional<BatchEvent> lots() {
        Optional<Integer> number = entry();
        List<String> codes = java.util.stream.Stream.of("lot1", "lot2", "lot3")
                .filter(field -> !input.text(field).isEmpty())
                .toList();
        Grams whole = number.flatMap(work::entry)
                .map(stillroom.formulary.batch.LogEntry::event)
                .filter(Poured.class::isInstance)
                .map(event -> ((Poured) event).mass())
                .orElse(Grams.ZERO);
        Grams said = Grams.sum(codes.stream()
                .flatMap(code -> input.grams(code.replace("lot", "part"), "The part").stream())
                .toList());
        List<BatchEvent.LotPart> parts = codes.stream()
                .map(code -> new BatchEvent.LotPart(
                        input.text(code),
                        input.grams(code.replace("lot", "part"), "The part").orElse(whole.minus(said))))
                .toList();
        return number.map(entry -> new BatchEvent.LotsNamed(entry, parts, input.text("note")));
    }

    private Optional<String> optional(String field) {
        return Optional.of(input.text(field)).filter(text -> !text.isEmpty());
    }

    private Optional<BatchEvent> accept() {
        return Optional.of(new BatchEvent.LineAccepted(input.text("line"), input.required("reason", "The reason")));
    }

    private Optional<BatchEvent> step() {
        return Optional.of(new BatchEvent.StepDone(
                vessel,
                optional("step"),
                input.required("doing", "What was done"),
                input.number("celsius", "The temperature", "-40", "250"),
                input.number("minutes", "The time", "0", "100000"),
                input.text("note")));
    }

    private Optional<BatchEvent> timer() {
        Optional<Double> minutes = input.number("timerMinutes", "The time", "0.1", "10080");
        if (minutes.isEmpty() && !input.hasProblem("timerMinutes")) {
            input.refuse("timerMinutes", "The time is missing: type the minutes.");
        }
        Instant now = work.desk().now();
        String label = input.text("label").isEmpty() ? "Timer" : input.text("label");
        return minutes.map(m -> new BatchEvent.TimerStarted(
                "timer-" + (work.state().lastEntry() + 1),
                vessel,
                label,
                now.plus(Duration.ofSeconds(Math.round(m * 60)))));
    }

    private Optional<BatchEvent> combine() {
        return Optional.of(new BatchEvent.Combined(
                input.text("from"),
                input.text("into"),
                input.number("fromCelsius", "The temperature", "-40", "250"),
                input.number("intoCelsius", "The temperature", "-40", "250")));
    }

    private Optional<BatchEvent> sample() {
        String what = input.required("what", "What the sample is for");
        return mass("mass", "The weight").map(g -> new BatchEvent.Sampled(vessel, g, what));
    }

    private Optional<BatchEvent> rest() {
        String typed = input.required("due", "When to look again");
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        try {
            Instant due = LocalDateTime.parse(typed).atZone(work.desk().zone()).toInstant();
            return Optional.of(new BatchEvent.RestBegun(due, input.text("lookFor")));
        } catch (DateTimeParseException notATime) {
            return input.refuse("due", "This is not a day and time: type it like 2026-11-25T14:00.");
        }
    }

    private Optional<Integer> entry() {
        Optional<Integer> entry = input.whole("entry", "The entry", 1, 1_000_000);
        return entry.isEmpty() && !input.hasProblem("entry")
                ? input.refuse("entry", "Say which entry is meant.")
                : entry;
    }

    private Optional<BatchEvent> strike() {
        String reason = input.required("reason", "The reason");
        return entry().map(number -> new BatchEvent.Struck(number, reason));
    }

    private Optional<BatchEvent> again() {
        Optional<Grams> shown = mass("shown", "The weight");
        return entry().flatMap(number -> shown.map(g -> new BatchEvent.ReadAgain(number, g)));
    }
}
