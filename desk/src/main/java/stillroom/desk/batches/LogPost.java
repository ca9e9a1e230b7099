package stillroom.desk.batches;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Judgement;
import stillroom.formulary.Problem;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchEvent.Poured;
import stillroom.formulary.batch.BatchRules;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.quantity.Grams;

/** Takes one act of the bench into the log, once, or says why not. */
public final class LogPost {
    private static final Pattern REQUEST = Pattern.compile("[A-Za-z0-9-]{8,64}");
    private static final int LONGEST_NAME = 60;

    private final BatchWork work;
    private final Input input;

    public LogPost(BatchWork work, Input input) {
        this.work = work;
        this.input = input;
    }

    /**
     * What came of it.
     *
     * @param entry as it stands on disk
     * @param meanwhile what was written from elsewhere since the form was shown, one sentence; nothing was stored then
     */
    public record Outcome(Optional<LogEntry> entry, String meanwhile) {
        static final Outcome REFUSED = new Outcome(Optional.empty(), "");
    }

    /**
     * Writes the act into the log, or says in the input why not.
     *
     * @param reader reads the form into the event that it means; none where something typed cannot be taken
     */
    public Outcome take(Supplier<Optional<BatchEvent>> reader) {
        String requestId = input.text("requestId");
        if (!REQUEST.matcher(requestId).matches()) {
            input.refuse("act", "The form was not complete; here it is again.");
            return Outcome.REFUSED;
        }
        Optional<LogEntry> made =
                work.desk().ledger().batches().made(work.batch().id(), requestId);
        if (made.isPresent()) {
            return new Outcome(made, "");
        }
        String by = by();
        Optional<BatchEvent> event = reader.get();
        event.ifPresent(this::judge);
        if (event.isEmpty() || !input.isSound()) {
            return Outcome.REFUSED;
        }
        String meanwhile = meanwhile(event.get());
        if (!meanwhile.isEmpty()) {
            return new Outcome(Optional.empty(), meanwhile);
        }
        return new Outcome(Optional.of(append(requestId, by, event.get())), "");
    }

    /** Before a decision the log says what it refers to, so that the hash on the signed record covers that too. */
    private LogEntry append(String requestId, String by, BatchEvent event) {
        if (!(event instanceof BatchEvent.Decided)) {
            return entered(requestId, by, event);
        }
        return work.desk().ledger().together(() -> {
            work.desk()
                    .ledger()
                    .seals()
                    .cover(work.batch().id(), requestId + "-covers", work.desk().now(), by, Judgement.ruleTexts());
            return entered(requestId, by, event);
        });
    }

    private LogEntry entered(String requestId, String by, BatchEvent event) {
        return work.desk()
                .ledger()
                .batches()
                .append(work.batch().id(), requestId, work.desk().now(), by, event);
    }

    private String by() {
        String by = input.required("by", "The name of who does this");
        if (by.length() > LONGEST_NAME) {
            input.refuse("by", "A name has up to " + LONGEST_NAME + " characters.");
        }
        if (input.text("checkedBy").length() > LONGEST_NAME) {
            input.refuse("checkedBy", "A name has up to " + LONGEST_NAME + " characters.");
        }
        return by;
    }

    private void judge(BatchEvent event) {
        List<Problem> problems = BatchRules.problems(work.state(), event, work.facts(event));
        problems.forEach(problem -> input.refuse(field(event, problem.field()), problem.sentence()));
        if (event instanceof Poured poured) {
            if (!poured.checkedBy().isEmpty() && poured.checkedBy().equalsIgnoreCase(input.text("by"))) {
                input.refuse(
                        "checkedBy",
                        "Who pours cannot check at the same moment; leave this open and read the weight again after a minute.");
            }
        }
    }

    /** The field that the person sees for a field of the event. */
    private static String field(BatchEvent event, String field) {
        if (event instanceof BatchEvent.VesselReady && field.equals("vessel")) {
            return "newVessel";
        }
        boolean inWords = event instanceof BatchEvent.ReadingTaken reading
                && reading.value().isEmpty()
                && field.equals("value");
        return inWords ? "words" : field;
    }

    /** Two tablets may weigh the same line: what the other wrote is shown before this is written as well. */
    private String meanwhile(BatchEvent event) {
        if (!(event instanceof Poured poured) || poured.lineId().isEmpty()) {
            return "";
        }
        int seen = input.whole("seen", "The page", 0, Integer.MAX_VALUE).orElse(0);
        List<Poured> others = work.state().pours().stream()
                .filter(pour -> pour.number() > seen)
                .map(pour -> pour.event())
                .filter(pour -> pour.lineId().equals(poured.lineId()))
                .toList();
        if (others.isEmpty()) {
            return "";
        }
        Grams added = Grams.sum(others.stream().map(Poured::mass).toList());
        Grams together = work.state().poured(poured.lineId().get()).plus(poured.mass());
        return "Meanwhile " + added + " g of this were written down from elsewhere. With yours " + together
                + " g would be in. Nothing of yours is stored yet: write it down again if it really was poured as well.";
    }
}
