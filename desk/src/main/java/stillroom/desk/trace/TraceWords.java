package stillroom.desk.trace;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Format;
import stillroom.ledger.trace.TraceStart.Kind;

/** What can be traced, in words. */
final class TraceWords {
    private TraceWords() {}

    static String kind(Kind kind) {
        return switch (kind) {
            case LOT -> "lot";
            case BATCH -> "batch";
            case PACK_LOT -> "container lot";
            case VESSEL -> "vessel";
            case BALANCE -> "balance";
            case PERSON -> "person";
            case SUPPLIER -> "supplier";
            case MATERIAL -> "material";
            case TIME -> "days";
        };
    }

    static String days(LocalDate from, LocalDate to) {
        return from.equals(to)
                ? "work on " + Format.day(from)
                : "work from " + Format.day(from) + " to " + Format.day(to);
    }

    static List<Choice> choices() {
        List<Choice> choices = new ArrayList<>(List.of(new Choice("", "whatever bears this name")));
        choices.addAll(Choice.of(Kind.class, TraceWords::kind));
        choices.add(new Choice(TraceAsk.RULE, "row of law, by its id"));
        return choices;
    }
}
