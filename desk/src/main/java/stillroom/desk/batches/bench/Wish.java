package stillroom.desk.batches.bench;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Input;
import stillroom.formulary.batch.NextAction;

/**
 * What the person wants to have before them: which vessel, which doing, and what it is about. The same fields stand in
 * the address of a page and, hidden, in its forms, so that a form that could not be taken shows the same again.
 */
record Wish(Optional<Doing> doing, String vessel, Map<String, String> about) {
    Wish {
        about = Map.copyOf(about);
    }

    static Wish of(Input input) {
        Map<String, String> about = new LinkedHashMap<>();
        for (String field :
                new String[] {"line", "step", "entry", "kind", "purpose", "material", "from", "into", "phase"}) {
            String typed = input.text(field);
            if (!typed.isEmpty()) {
                about.put(field, typed);
            }
        }
        Optional<Doing> doing = Doing.of(input.text("do")).or(() -> Doing.of(input.text("act")));
        return new Wish(doing, input.text("vessel"), about);
    }

    static Wish nothing(String vessel) {
        return new Wish(Optional.empty(), vessel, Map.of());
    }

    String get(String field) {
        return about.getOrDefault(field, "");
    }

    /** Whether nothing in particular is asked for. */
    boolean isDone() {
        return doing.filter(Doing.DONE::equals).isPresent();
    }

    Wish in(String otherVessel) {
        return new Wish(doing, otherVessel, about);
    }

    /** As the query of an address. */
    static String query(String vessel, Doing doing, String... about) {
        StringBuilder query = new StringBuilder("?do=" + doing.key());
        if (!vessel.isEmpty()) {
            query.append("&vessel=").append(coded(vessel));
        }
        for (int i = 0; i + 1 < about.length; i += 2) {
            query.append('&').append(about[i]).append('=').append(coded(about[i + 1]));
        }
        return query.toString();
    }

    static String coded(String value) {
        return URLEncoder.encode(value, StandardCharsets.UTF_8);
    }

    /** What an action asks to have before one. */
    static Wish of(NextAction action, String vessel) {
        if (action instanceof NextAction.ReadyVessel ready) {
            return wish(Doing.READY, vessel, Map.of("step", ready.phaseId()));
        }
        if (action instanceof NextAction.Weigh weigh) {
            return wish(Doing.WEIGH, vessel, Map.of("line", weigh.line().lineId()));
        }
        if (action instanceof NextAction.SettleOver over) {
            return wish(Doing.SETTLE, vessel, Map.of("line", over.line().lineId()));
        }
        if (action instanceof NextAction.AddToReading add) {
            return wish(Doing.WEIGH, vessel, Map.of("line", add.line().lineId()));
        }
        if (action instanceof NextAction.Correct) {
            return wish(Doing.OUTSIDE, vessel, Map.of());
        }
        if (action instanceof NextAction.ReadPh) {
            return wish(Doing.READ, vessel, Map.of("kind", "PH"));
        }
        if (action instanceof NextAction.DoStep step) {
            return wish(Doing.STEP, vessel, Map.of("step", step.step().id()));
        }
        if (action instanceof NextAction.Combine combine) {
            return wish(Doing.COMBINE, vessel, Map.of("from", combine.from(), "into", combine.into()));
        }
        if (action instanceof NextAction.TakeOut out) {
            return wish(Doing.SAMPLE, vessel, Map.of("phase", out.phaseId()));
        }
        if (action instanceof NextAction.LookAgain) {
            return wish(Doing.LOOK, vessel, Map.of());
        }
        return wish(Doing.DONE, vessel, Map.of());
    }

    private static Wish wish(Doing doing, String vessel, Map<String, String> about) {
        return new Wish(Optional.of(doing), vessel, about);
    }

    String query() {
        String[] pairs = about.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .flatMap(entry -> java.util.stream.Stream.of(entry.getKey(), entry.getValue()))
                .toArray(String[]::new);
        return query(vessel, doing.orElse(Doing.DONE), pairs);
    }
}
