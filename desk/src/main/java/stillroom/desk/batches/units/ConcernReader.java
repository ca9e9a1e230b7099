package stillroom.desk.batches.units;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Input;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchEvent.Decided;
import stillroom.formulary.batch.BatchEvent.Decision;
import stillroom.formulary.concern.Concern;

/** Reads the forms of the page into what they mean. Problems stand in the input. */
final class ConcernReader {
    private static final int MOST_UNITS = 1_000_000;

    private final Input input;
    private final LocalDate today;

    ConcernReader(Input input, LocalDate today) {
        this.input = input;
        this.today = today;
    }

    /** None where something typed cannot be taken. */
    Optional<BatchEvent> event() {
        Optional<BatchEvent> event = switch (input.text("act")) {
            case "stop" -> stopped().map(BatchEvent.Concerned::new);
            case "go-on" -> goneOn().map(BatchEvent.Concerned::new);
            case "explain" ->
                Optional.of(new BatchEvent.Concerned(
                        new Concern.Explained(input.text("deviation"), input.required("explained", "The reason"))));
            case "move" -> moved().map(BatchEvent.Concerned::new);
            case "count" -> counted().map(BatchEvent.Concerned::new);
            case "complaint" ->
                Optional.of(new BatchEvent.Concerned(new Concern.Complained(
                        day("complained-on"),
                        input.text("complained-from"),
                        input.required("about", "What was said"))));
            case "reaction" ->
                Optional.of(new BatchEvent.Concerned(new Concern.Reacted(
                        day("reacted-on"),
                        input.text("reacted-from"),
                        input.required("what", "What was seen"),
                        input.has("serious"))));
            case "sample" -> sampleKept().map(BatchEvent.Concerned::new);
            case "scrap" -> decided(Decision.SCRAPPED);
            case "recall" -> decided(Decision.RECALLED);
            default -> input.refuse("act", "This form is not known here; go back and try again.");
        };
        return input.isSound() ? event : Optional.empty();
    }

    private LocalDate day(String field) {
        return input.day(field, "The day").orElse(today);
    }

    private Optional<Integer> whole(String field, String what) {
        Optional<Integer> read = input.whole(field, what, 0, MOST_UNITS);
        return read.isEmpty() && !input.hasProblem(field) ? input.refuse(field, what + " is missing.") : read;
    }

    private Optional<Concern> stopped() {
        Optional<Concern.Stop> stop = input.choice("stop", "The stop", Concern.Stop.class);
        Optional<LocalDate> until = input.day("until", "The day");
        String why = input.required("why", "The reason");
        return stop.map(kind -> new Concern.Stopped(kind, why, until));
    }

    private Optional<Concern> goneOn() {
        String words = input.required("words", "The result, or why it may go on,");
        return input.whole("entry", "The entry", 1, MOST_UNITS).map(entry -> new Concern.GoneOn(entry, words));
    }

    private Optional<Concern> moved() {
        Optional<Concern.Move> move = input.choice("move", "What happened", Concern.Move.class);
        Optional<Integer> units = whole("units", "The number of units");
        LocalDate on = day("on");
        return move.flatMap(kind ->
                units.map(count -> new Concern.Moved(kind, count, on, input.text("to"), input.text("move-note"))));
    }

    private Optional<Concern> counted() {
        return whole("found", "The number of units")
                .map(found -> new Concern.UnitsCounted(found, input.text("count-note")));
    }

    private Optional<Concern> sampleKept() {
        Optional<Integer> units = whole("samples", "The number of samples");
        Optional<LocalDate> until = input.day("keep-until", "The day");
        if (until.isEmpty() && !input.hasProblem("keep-until")) {
            input.refuse("keep-until", "Until when they are kept is missing.");
        }
        String where = input.required("where", "Where they stand");
        return units.flatMap(count -> until.map(
                day -> new Concern.SampleKept(count, input.grams("sample-mass", "The mass"), where, day, "")));
    }

    private Optional<BatchEvent> decided(Decision decision) {
        return Optional.of(new Decided(decision, input.text("by"), input.text("reason"), List.of()));
    }
}
