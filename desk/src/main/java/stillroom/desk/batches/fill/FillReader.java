package stillroom.desk.batches.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Input;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchEvent.Decided;
import stillroom.formulary.batch.BatchEvent.Decision;
import stillroom.formulary.batch.ReleaseGate;
import stillroom.formulary.quantity.Grams;

/** Reads the forms of the page: filling, and the decision. */
final class FillReader {
    private final Input input;
    private final List<ReleaseGate> gates;
    private final Contents contents;
    private final Packing packing;
    private final CheckReader checks;

    FillReader(Input input, List<ReleaseGate> gates, Contents contents, Packing packing) {
        this.input = input;
        this.gates = gates;
        this.contents = contents;
        this.packing = packing;
        this.checks = new CheckReader(input, contents, packing);
    }

    Optional<BatchEvent> event() {
        Optional<BatchEvent> event = switch (input.text("act")) {
            case "fill" -> filled();
            case "check" -> checks.read();
            case "release" -> decided(Decision.RELEASED);
            case "reject" -> decided(Decision.REJECTED);
            default -> input.refuse("act", "This form is not known here; go back and try again.");
        };
        return input.isSound() ? event : Optional.empty();
    }

    private Optional<BatchEvent> filled() {
        Optional<String> packLot = Optional.of(input.text("packLot")).filter(code -> !code.isEmpty());
        String named = packing.nameOf(packLot);
        String pack =
                input.text("pack").isEmpty() && !named.isEmpty() ? named : input.required("pack", "The container");
        Optional<Integer> containers = input.whole("containers", "The number of containers", 1, 1_000_000);
        if (containers.isEmpty() && !input.hasProblem("containers")) {
            input.refuse("containers", "The number of containers is missing.");
        }
        Optional<Grams> total = input.grams("total", "The total");
        if (total.isEmpty() && !input.hasProblem("total")) {
            input.refuse("total", "The total is missing: type the grams that went into all of them.");
        }
        Optional<Grams> retained = input.grams("retained", "What is retained");
        if (!input.isSound()) {
            return Optional.empty();
        }
        BatchEvent.Filled filled = new BatchEvent.Filled(
                input.text("vessel"),
                pack,
                containers.orElseThrow(),
                total.orElseThrow(),
                retained,
                input.text("note"),
                packLot);
        packing.problems(filled, contents.density().or(contents::expected)).forEach(problem -> {
            if (input.text("note").isEmpty()) {
                input.refuse(problem.field(), problem.sentence());
            }
        });
        askAbout(filled);
        return Optional.of(filled);
    }

    /** A count or a total that was mistyped shows in the mean. */
    private void askAbout(BatchEvent.Filled filled) {
        contents.of(filled)
                .filter(mean -> mean.verdict().asks() && input.text("sure").isEmpty())
                .ifPresent(mean -> input.refuse(
                        "sure",
                        mean.each() + " g a container. " + mean.says()
                                + " Look at the count and at the total again; tick this if both are so."));
    }

    private Optional<BatchEvent> decided(Decision decision) {
        List<String> overruled = new ArrayList<>();
        for (ReleaseGate gate : gates) {
            String reason = input.text("overrule-" + gate.name());
            if (!gate.met() && decision == Decision.RELEASED) {
                if (reason.isEmpty()) {
                    input.refuse("overrule-" + gate.name(), "Mend it, or give a reason for going on.");
                } else {
                    overruled.add(ReleaseGate.overruling(gate.name(), reason));
                }
            }
        }
        Decided event = new Decided(decision, input.text("by"), input.text("reason"), overruled);
        if (input.isSound()) {
            ReleaseGate.problems(gates, event).forEach(problem -> input.refuse("act", problem.sentence()));
        }
        return Optional.of(event);
    }
}
