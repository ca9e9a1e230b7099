package stillroom.desk.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.LongSupplier;
import stillroom.science.blend.Blend;
import stillroom.science.blend.BlendAnswer;
import stillroom.science.blend.BlendSolver;
import stillroom.science.blend.Explanation;
import stillroom.science.blend.Limit;
import stillroom.science.blend.Mix;
import stillroom.science.blend.Patience;
import stillroom.science.blend.WhyNot;

/** Solves a blend and writes the answer as JSON. */
final class BlendWriter {
    /** A sum this near to its bound, relative to the limit's size, stands on it. */
    private static final double ON_BOUND = 1e-7;

    private final BlendTask task;
    private final ObjectNode answer = JsonNodeFactory.instance.objectNode();

    private final LongSupplier nanoseconds;

    private BlendWriter(BlendTask task, LongSupplier nanoseconds) {
        this.task = task;
        this.nanoseconds = nanoseconds;
    }

    /** @param nanoseconds a clock with any beginning */
    static ObjectNode write(BlendTask task, BlendStatus status, LongSupplier nanoseconds) {
        return new BlendWriter(task, nanoseconds).solve(status);
    }

    private ObjectNode solve(BlendStatus status) {
        long from = nanoseconds.getAsLong();
        BlendAnswer found = BlendSolver.solve(task.blend(), within(task.seconds()));
        double seconds = (nanoseconds.getAsLong() - from) / 1e9;
        ObjectNode said = found.match(
                optimal -> optimal(optimal), stopped -> stopped(stopped, status), infeasible -> infeasible(status));
        said.put("nodes", found.nodes());
        said.put("seconds", seconds);
        if (!task.notes().isEmpty()) {
            ArrayNode notes = said.putArray("notes");
            task.notes().forEach(notes::add);
        }
        return said;
    }

    private Patience within(double seconds) {
        long end = nanoseconds.getAsLong() + (long) (seconds * 1e9);
        return progress -> nanoseconds.getAsLong() - end > 0;
    }

    private ObjectNode optimal(BlendAnswer.Optimal optimal) {
        answer.put("status", "optimal");
        answer.put("objective", optimal.objective());
        answer.put("bound", optimal.bound());
        answer.put("gap", (optimal.objective() - optimal.bound()) / Math.max(1, Math.abs(optimal.objective())));
        mix(optimal.best());
        return answer;
    }

    private ObjectNode stopped(BlendAnswer.Stopped stopped, BlendStatus status) {
        status.stopped();
        answer.put("status", "stopped");
        if (Double.isFinite(stopped.bound())) {
            answer.put("bound", stopped.bound());
        }
        stopped.best().ifPresent(mix -> {
            answer.put("objective", stopped.objective());
            if (Double.isFinite(stopped.bound())) {
                answer.put("gap", stopped.gap());
            }
            mix(mix);
        });
        return answer;
    }

    private void mix(Mix mix) {
        Blend blend = task.blend();
        answer.put("used", mix.used());
        ObjectNode fractions = answer.putObject("fractions");
        double cost = 0;
        for (int j = 0; j < blend.size(); j++) {
            double fraction = mix.fractions().get(j);
            cost += fraction * task.costs().get(j);
            if (fraction > 0) {
                fractions.put(blend.ingredients().get(j).name(), fraction);
            }
        }
        answer.put("cost", cost);
        ArrayNode limits = answer.putArray("limits");
        for (int i = 0; i < blend.limits().size(); i++) {
            limit(
                    limits.addObject(),
                    blend.limits().get(i),
                    mix.sums().get(i),
                    mix.prices().get(i));
        }
    }

    private static void limit(ObjectNode into, Limit limit, double sum, double price) {
        into.put("property", limit.name());
        into.put("value", sum);
        double near = ON_BOUND * Math.max(1, Math.abs(sum));
        if (Math.abs(sum - limit.min()) <= near) {
            into.put("binding", "min");
        } else if (Math.abs(sum - limit.max()) <= near) {
            into.put("binding", "max");
        }
        into.put("shadowPrice", price);
    }

    private ObjectNode infeasible(BlendStatus status) {
        status.impossible();
        answer.put("status", "infeasible");
        Explanation why = WhyNot.explain(task.blend(), within(task.seconds()));
        ArrayNode conflict = answer.putArray("conflict");
        why.conflict().forEach(each -> BlendWords.write(conflict.addObject(), each, task.blend()));
        answer.put("smallest", why.smallest());
        ArrayNode alone = answer.putArray("oneAlone");
        why.alone().forEach(each -> BlendWords.write(alone.addObject(), each, task.blend()));
        ArrayNode together = answer.putArray("together");
        why.together().forEach(each -> BlendWords.write(together.addObject(), each, task.blend()));
        return answer;
    }
}
