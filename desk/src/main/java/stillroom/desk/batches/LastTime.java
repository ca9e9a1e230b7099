package stillroom.desk.batches;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.batch.Content;
import stillroom.formulary.batch.Logged;
import stillroom.formulary.batch.Vessel;
import stillroom.formulary.batch.Yield;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;
import stillroom.ledger.batch.BatchQuery;

/** What happened the last five times that this product was made. */
public record LastTime(List<Earlier> earlier) {
    private static final int TIMES = 5;
    private static final int LOOKED_AT = 30;

    public LastTime {
        earlier = List.copyOf(earlier);
    }

    /** An earlier batch with something in it. */
    public record Earlier(String code, BatchState state) {
        /** All that was put in [g]. */
        public Grams mass() {
            return Grams.sum(state.inputs().stream().map(Content::mass).toList());
        }
    }

    /** @param without the batch that one stands at, if any */
    public static LastTime of(Desk desk, long productId, Optional<Long> without) {
        BatchQuery ofProduct = new BatchQuery(BatchQuery.ALL.stages(), Optional.of(productId), "");
        return new LastTime(desk.ledger().batches().page(ofProduct, 0, LOOKED_AT).rows().stream()
                .map(row -> row.batch())
                .filter(batch -> without.filter(id -> id == batch.id()).isEmpty())
                .map(batch -> new Earlier(
                        batch.code(), BatchState.of(desk.ledger().batches().log(batch.id()))))
                .filter(one -> one.mass().signum() > 0)
                .toList());
    }

    /** The largest that was made; none for a first batch [g]. */
    public Optional<Grams> largest() {
        return earlier.stream().map(Earlier::mass).max(Grams::compareTo);
    }

    /** The largest vessel that was used and whose capacity is known [g]. */
    public Optional<Grams> vessel() {
        return earlier.stream()
                .flatMap(one -> one.state().vessels().stream())
                .flatMap(vessel -> vessel.capacity().stream())
                .max(Grams::compareTo);
    }

    /** How long the steps took in the largest batch, by the step's id [min]. */
    public Map<String, Double> minutes() {
        return earlier.stream()
                .max(Comparator.comparing(Earlier::mass))
                .map(one -> one.state().steps().stream()
                        .map(Logged::event)
                        .filter(done ->
                                done.stepId().isPresent() && done.minutes().isPresent())
                        .collect(Collectors.toMap(
                                done -> done.stepId().orElseThrow(),
                                done -> done.minutes().orElseThrow(),
                                Double::sum)))
                .orElse(Map.of());
    }

    private List<Earlier> five() {
        return earlier.stream().limit(TIMES).toList();
    }

    /** What went in for a line, with its share. */
    public List<String> line(String lineId) {
        return five().stream()
                .filter(one -> one.state().poured(lineId).signum() > 0)
                .map(one -> one.code() + ": " + Masses.shown(one.state().poured(lineId)) + " g, "
                        + Format.decimal(
                                Percent.share(one.state().poured(lineId), one.mass())
                                        .value(),
                                2)
                        + " % of " + Masses.shown(one.mass()) + " g")
                .toList();
    }

    /** How a step went. */
    public List<String> step(String stepId) {
        return five().stream()
                .flatMap(one -> one.state().steps().stream()
                        .map(Logged::event)
                        .filter(done -> done.stepId().filter(stepId::equals).isPresent())
                        .map(done -> one.code() + ": "
                                + done.celsius()
                                        .map(c -> LogWords.plain(c) + " °C")
                                        .orElse("no temperature")
                                + done.minutes()
                                        .map(m -> ", " + LogWords.plain(m) + " min")
                                        .orElse("")
                                + (done.note().isBlank() ? "" : ", " + done.note())))
                .toList();
    }

    /** What evaporated. */
    public List<String> evaporated() {
        return five().stream()
                .filter(one -> one.state().vessels().stream().map(Vessel::tare).anyMatch(Optional::isPresent)
                        && !one.state().weighings().isEmpty())
                .map(one -> {
                    Grams lost = Yield.of(one.state()).evaporated();
                    return one.code() + ": " + Masses.shown(lost) + " g, "
                            + Format.figure(
                                    100 * lost.doubleValue() / one.mass().doubleValue(), 1) + " % of what was put in";
                })
                .toList();
    }

    /** What became of it. */
    public List<String> yields() {
        return five().stream()
                .filter(one -> !one.state().fills().isEmpty())
                .map(one -> {
                    Yield yield = Yield.of(one.state());
                    return one.code() + ": " + Masses.shown(one.mass()) + " g made, "
                            + yield.filledPercent()
                                    .map(p -> Format.decimal(p, 1))
                                    .orElse("0") + " % filled, "
                            + yield.lossPercent().map(p -> Format.decimal(p, 1)).orElse("0") + " % unaccounted for";
                })
                .toList();
    }

    /** Mean of what was unaccounted for, a proposal for the loss of the next one; none before anything was filled [%]. */
    public Optional<String> usualLoss() {
        List<Double> losses = five().stream()
                .filter(one -> !one.state().fills().isEmpty())
                .flatMap(one -> Yield.of(one.state()).lossPercent().stream())
                .map(percent -> Math.max(0, percent.doubleValue()))
                .collect(Collectors.toList());
        return losses.isEmpty()
                ? Optional.empty()
                : Optional.of(Format.figure(
                        losses.stream()
                                .mapToDouble(Double::doubleValue)
                                .average()
                                .orElse(0),
                        1));
    }
}
