package stillroom.desk.trace;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Input;
import stillroom.formulary.judgement.pot.Opened;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.rule.Rule;
import stillroom.ledger.trace.TraceStart;
import stillroom.ledger.trace.TraceStart.Kind;

/**
 * What is asked of the trace.
 *
 * @param word what was typed or scanned
 * @param start where the trace begins; none where nothing was asked or the word is not known
 * @param alternatives as what else the word is known
 * @param rule the row of law that was meant, where one was
 */
record TraceAsk(String word, String about, Optional<TraceStart> start, List<Kind> alternatives, Optional<Rule> rule) {
    static final String RULE = "RULE";
    private static final String LOT_MARK = "lot:";
    private static final String BATCH_MARK = "batch:";

    TraceAsk {
        alternatives = List.copyOf(alternatives);
    }

    static TraceAsk of(Desk desk, Input input) {
        Optional<LocalDate> from = input.day("from", "The first day");
        Optional<LocalDate> to = input.day("to", "The last day");
        String kind = input.text("kind");
        if (kind.equals(Kind.TIME.name()) || (input.text("q").isEmpty() && from.isPresent())) {
            return time(desk, input, from, to);
        }
        String word = bare(input.text("q"));
        if (word.isEmpty()) {
            return new TraceAsk("", "", Optional.empty(), List.of(), Optional.empty());
        }
        Optional<Rule> rule = rule(word);
        if (kind.equals(RULE) || (kind.isEmpty() && rule.isPresent())) {
            return ofRule(desk, word, rule);
        }
        Optional<Kind> chosen = input.choice("kind", "The kind", Kind.class);
        List<Kind> known = desk.ledger().traces().known(word);
        Optional<Kind> meant = chosen.or(() -> known.stream().findFirst());
        return new TraceAsk(
                word,
                meant.map(one -> TraceWords.kind(one) + " " + word).orElse(""),
                meant.map(one -> TraceStart.of(one, word)),
                known.stream().filter(one -> !Optional.of(one).equals(meant)).toList(),
                Optional.empty());
    }

    /** A scanned code may say in front of it what it is of. */
    private static String bare(String scanned) {
        for (String mark : List.of(LOT_MARK, BATCH_MARK)) {
            int at = scanned.toLowerCase(java.util.Locale.ROOT).lastIndexOf(mark);
            if (at >= 0) {
                return scanned.substring(at + mark.length()).strip();
            }
        }
        return scanned;
    }

    private static TraceAsk time(Desk desk, Input input, Optional<LocalDate> from, Optional<LocalDate> to) {
        if (from.isEmpty()) {
            input.refuse("from", "From which day on?");
            return new TraceAsk("", "", Optional.empty(), List.of(), Optional.empty());
        }
        LocalDate last = to.orElse(from.get());
        if (last.isBefore(from.get())) {
            input.refuse("to", "The last day lies before the first.");
            return new TraceAsk("", "", Optional.empty(), List.of(), Optional.empty());
        }
        TraceStart start = TraceStart.time(
                from.get().atStartOfDay(desk.zone()).toInstant(),
                last.plusDays(1).atStartOfDay(desk.zone()).toInstant());
        return new TraceAsk("", TraceWords.days(from.get(), last), Optional.of(start), List.of(), Optional.empty());
    }

    private static Optional<Rule> rule(String id) {
        return stillroom.desk.shell.Judgement.rules().laws().values().stream()
                .flatMap(law -> law.rules().stream())
                .filter(rule -> rule.id().equalsIgnoreCase(id))
                .findFirst();
    }

    /** A row of law reaches what holds a substance that it names. */
    private static TraceAsk ofRule(Desk desk, String word, Optional<Rule> rule) {
        MaterialBook book = desk.ledger().materials().book();
        List<String> materials = rule.map(Rule::substances).orElse(List.of()).isEmpty()
                ? List.of()
                : book.materials().stream()
                        .filter(material -> Opened.parts(Optional.of(material), book).stream()
                                .anyMatch(
                                        part -> rule.orElseThrow().substances().contains(part.substance())))
                        .map(material -> material.key())
                        .toList();
        return new TraceAsk(
                word,
                rule.map(row -> "rule " + row.id() + ", " + row.name()).orElse(""),
                rule.map(row -> TraceStart.materials(materials)),
                List.of(),
                rule);
    }
}
