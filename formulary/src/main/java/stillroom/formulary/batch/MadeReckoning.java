package stillroom.formulary.batch;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;

/** Sorts what came in by line and by lot. */
final class MadeReckoning {
    private final BatchState state;
    private final Formula formula;
    private final MaterialBook book;
    private final Mixture product;

    MadeReckoning(BatchState state, Formula formula, MaterialBook book) {
        this.state = state;
        this.formula = formula;
        this.book = book;
        this.product = productOf(state);
    }

    AsMade asMade() {
        Grams added = Grams.sum(state.inputs().stream().map(Content::mass).toList());
        return new AsMade(
                lines(), lots(), added, product.net(), new Evaporation(book).of(product), HotPour.of(state, book));
    }

    /** Where no product is left (all handed over, say), the make of the batch is that of everything. */
    private static Mixture productOf(BatchState state) {
        Mixture product = state.product();
        return product.asAdded().signum() > 0 ? product : state.everywhere();
    }

    private List<MadeLine> lines() {
        Set<String> ids = new LinkedHashSet<>();
        state.plan().ifPresent(plan -> plan.lines().forEach(line -> ids.add(line.lineId())));
        Map<String, List<Content>> came = byLine(state.inputs());
        Map<String, List<Content>> stayed = byLine(product.contents());
        ids.addAll(came.keySet());
        List<MadeLine> lines = new ArrayList<>();
        for (String id : ids) {
            lines.add(line(id, came.getOrDefault(id, List.of()), stayed.getOrDefault(id, List.of())));
        }
        return lines;
    }

    private MadeLine line(String id, List<Content> came, List<Content> stayed) {
        Optional<PlannedLine> planned = state.plan().flatMap(plan -> plan.line(id));
        boolean toReading = planned.map(PlannedLine::toReading)
                .orElse(came.stream().allMatch(content -> corrects(content.purpose())));
        return new MadeLine(
                id,
                planned.map(PlannedLine::phaseId).orElseGet(() -> phaseOf(id, toReading)),
                planned.map(PlannedLine::materialKey)
                        .orElseGet(() -> came.get(0).materialKey()),
                planned.map(PlannedLine::target),
                planned.map(PlannedLine::tolerance),
                planned.map(PlannedLine::asked),
                mass(came),
                share(mass(stayed)),
                toReading);
    }

    private static boolean corrects(Purpose purpose) {
        return purpose != Purpose.LINE && purpose != Purpose.MISTAKE;
    }

    private String phaseOf(String id, boolean correction) {
        for (Phase phase : formula.phases()) {
            if (phase.lines().stream().anyMatch(line -> line.id().equals(id))) {
                return phase.id();
            }
        }
        return correction ? AsMade.CORRECTIONS : vesselOf(id);
    }

    /** Free-hand work has no phases: each vessel stands for one. */
    private String vesselOf(String id) {
        int entry = byLine(state.inputs()).getOrDefault(id, List.of()).stream()
                .mapToInt(Content::entry)
                .findFirst()
                .orElse(0);
        return state.pours().stream()
                .filter(pour -> pour.number() == entry)
                .map(pour -> pour.event().vessel())
                .findFirst()
                .orElse("bulk");
    }

    /** Percent of the product as added; nothing made is 0 %. */
    private Percent share(Grams mass) {
        Grams whole = product.asAdded();
        return whole.signum() > 0 && mass.signum() > 0 ? Percent.share(mass, whole) : Percent.ZERO;
    }

    private Map<String, List<Content>> byLine(List<Content> contents) {
        Map<String, List<Content>> lines = new LinkedHashMap<>();
        contents.forEach(content ->
                lines.computeIfAbsent(idOf(content), id -> new ArrayList<>()).add(content));
        return lines;
    }

    /** The line that a content serves, unless it was another material than the line's; else an id of its own. */
    private String idOf(Content content) {
        return content.lineId()
                .filter(id -> materialOf(id).map(content.materialKey()::equals).orElse(true))
                .orElseGet(() -> "made-" + content.materialKey()
                        + (content.purpose() == Purpose.LINE
                                ? ""
                                : "-"
                                        + content.purpose()
                                                .name()
                                                .toLowerCase(Locale.ROOT)
                                                .replace('_', '-')));
    }

    private Optional<String> materialOf(String lineId) {
        return state.plan()
                .flatMap(plan -> plan.line(lineId))
                .map(PlannedLine::materialKey)
                .or(() -> formula.line(lineId).map(Line::materialKey));
    }

    private List<MadeLot> lots() {
        Map<LotKey, List<Content>> came = byLot(state.inputs());
        Map<LotKey, List<Content>> stayed = byLot(product.contents());
        return came.entrySet().stream()
                .map(entry -> new MadeLot(
                        entry.getKey().materialKey(),
                        entry.getKey().lot(),
                        mass(entry.getValue()),
                        mass(stayed.getOrDefault(entry.getKey(), List.of()))))
                .toList();
    }

    private record LotKey(String materialKey, Optional<String> lot) {}

    private static Map<LotKey, List<Content>> byLot(List<Content> contents) {
        Map<LotKey, List<Content>> lots = new LinkedHashMap<>();
        contents.forEach(content -> lots.computeIfAbsent(
                        new LotKey(content.materialKey(), content.lot()), key -> new ArrayList<>())
                .add(content));
        return lots;
    }

    private static Grams mass(List<Content> contents) {
        return Grams.sum(contents.stream().map(Content::mass).toList());
    }
}
