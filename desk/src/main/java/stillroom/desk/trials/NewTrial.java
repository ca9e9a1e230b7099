package stillroom.desk.trials;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Input;
import stillroom.formulary.formula.Line;
import stillroom.formulary.trial.TrialSet;
import stillroom.science.design.DesignAnswer;
import stillroom.science.design.DesignTask;
import stillroom.science.mixture.Blending;
import stillroom.science.mixture.MixtureModel;
import stillroom.science.mixture.MixtureRegion;
import stillroom.science.mixture.ProcessTerms;

/** The form of a new set of trials, read. */
final class NewTrial {
    static final int VARIABLES = 2;
    static final int RESPONSES = 3;
    private static final String LARGE = "1000000000";
    private static final String SMALL = "-1000000000";

    private final Input input;
    private final Varied varied;

    NewTrial(Input input, Varied varied) {
        this.input = input;
        this.varied = varied;
    }

    /** What the form asks for; empty where something cannot be taken, and the input says what. */
    Optional<Asked> read() {
        String name = input.required("name", "The question");
        List<TrialSet.Component> components = components();
        double share = components.stream()
                .mapToDouble(one -> varied.percent(one.lineId()))
                .sum();
        List<TrialSet.Variable> variables = variables();
        List<TrialSet.Response> responses = responses();
        Kind kind = input.choice("criterion", "The design", Kind.class).orElse(Kind.I);
        int steps = input.whole("steps", "The number of steps", 1, 5).orElse(2);
        int runs = input.whole("runs", "The number of runs", 2, 200).orElse(0);
        int blocks = input.whole("blocks", "The number of days", 1, 12).orElse(1);
        int repeats = input.whole("repeats", "The number of repeats", 0, 50).orElse(0);
        Blending blending = input.choice("model", "The model", Blending.class).orElse(Blending.QUADRATIC);
        if (components.size() < 2) {
            input.refuse("components", "Choose two lines or more, each with its least and most.");
        }
        if (responses.isEmpty()) {
            input.refuse("response1", "Name at least one thing to be measured.");
        }
        if (kind.classical() && (!variables.isEmpty() || blocks > 1)) {
            input.refuse(
                    "criterion",
                    "A lattice or centroid takes no process variables and is made on one day: choose an optimal design.");
        }
        if (kind.classical() && components.size() > 8) {
            input.refuse("criterion", "A lattice or centroid is made for up to 8 lines: choose an optimal design.");
        }
        if (!input.isSound()) {
            return Optional.empty();
        }
        List<String> limits =
                new Limits(varied.lines().stream().map(Line::id).toList(), components).read(input, "constraints");
        if (!input.isSound()) {
            return Optional.empty();
        }
        return region(components, share, limits).flatMap(region -> {
            MixtureModel model = MixtureModel.of(components.size(), blending, variables.size(), ProcessTerms.LINEAR);
            DesignTask task = new DesignTask(
                    region, model, runs, new DesignTask.Wishes(kind.criterion(), blocks, repeats, List.of(), 1));
            if (!kind.classical()) {
                task.problems().forEach(sentence -> input.refuse("runs", sentence));
            }
            return input.isSound()
                    ? Optional.of(new Asked(
                            name, components, share, limits, variables, responses, task, blending, kind, steps))
                    : Optional.empty();
        });
    }

    /** @param task the question for the design */
    record Asked(
            String name,
            List<TrialSet.Component> components,
            double share,
            List<String> constraints,
            List<TrialSet.Variable> variables,
            List<TrialSet.Response> responses,
            DesignTask task,
            Blending blending,
            Kind kind,
            int steps) {

        /** The runs, or why there are none. */
        DesignAnswer answer() {
            return kind.classical() ? kind.classical(task, steps) : Making.search(task);
        }
    }

    private Optional<MixtureRegion> region(
            List<TrialSet.Component> components, double share, List<String> constraints) {
        MixtureRegion region = Region.of(components, share, constraints);
        region.problems().forEach(sentence -> input.refuse("components", together(sentence, components, share)));
        return input.isSound() ? Optional.of(region) : Optional.empty();
    }

    private static String together(String sentence, List<TrialSet.Component> components, double share) {
        return Limits.inFormula(sentence, components, share) + " The chosen lines take "
                + TrialPage.plain(Math.rint(share * 100) / 100) + " % of the formula together.";
    }

    private List<TrialSet.Component> components() {
        List<TrialSet.Component> components = new ArrayList<>();
        for (Line line : varied.lines()) {
            if (!input.all("component").contains(line.id())) {
                continue;
            }
            Optional<BigDecimal> low = input.decimal("low-" + line.id(), "The least", "0", "100");
            Optional<BigDecimal> high = input.decimal("high-" + line.id(), "The most", "0", "100");
            if (low.isEmpty() || high.isEmpty() || low.get().compareTo(high.get()) >= 0) {
                input.refuse("low-" + line.id(), varied.name(line) + " needs a least and a larger most.");
            } else {
                components.add(new TrialSet.Component(
                        line.id(),
                        varied.name(line),
                        low.get().doubleValue(),
                        high.get().doubleValue()));
            }
        }
        return components;
    }

    private List<TrialSet.Variable> variables() {
        List<TrialSet.Variable> variables = new ArrayList<>();
        for (int k = 1; k <= VARIABLES; k++) {
            String name = input.text("variable" + k);
            if (name.isEmpty()) {
                continue;
            }
            Optional<Double> low = input.reading("variable" + k + "low", "The lowest setting", SMALL, LARGE);
            Optional<Double> high = input.reading("variable" + k + "high", "The highest setting", SMALL, LARGE);
            if (low.isEmpty() || high.isEmpty() || low.get() >= high.get()) {
                input.refuse("variable" + k, name + " needs a lowest and a higher highest setting.");
            } else {
                variables.add(new TrialSet.Variable(name, low.get(), high.get()));
            }
        }
        return variables;
    }

    private List<TrialSet.Response> responses() {
        List<TrialSet.Response> responses = new ArrayList<>();
        for (int k = 1; k <= RESPONSES; k++) {
            String field = "response" + k;
            String name = input.text(field);
            if (name.isEmpty()) {
                continue;
            }
            TrialSet.Aim aim = input.choice(field + "aim", "What is wanted", TrialSet.Aim.class)
                    .orElse(TrialSet.Aim.NONE);
            double low = input.reading(field + "low", "From", SMALL, LARGE).orElse(0.0);
            double high = input.reading(field + "high", "Up to", SMALL, LARGE).orElse(0.0);
            double target =
                    input.reading(field + "target", "The target", SMALL, LARGE).orElse((low + high) / 2);
            boolean sound = low < high && low <= target && target <= high;
            if (aim != TrialSet.Aim.NONE && !sound) {
                input.refuse(field + "low", name + " needs a range from lower to higher, and a target within it.");
            }
            if (responses.stream().anyMatch(other -> other.name().equals(name))) {
                input.refuse(field, name + " stands here twice.");
            }
            responses.add(new TrialSet.Response(
                    name, input.text(field + "unit"), aim, low, target, high, input.has(field + "panel")));
        }
        return responses;
    }
}
