package stillroom.desk.products;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.products.Draft.Slot;
import stillroom.desk.products.FormulaPage.CardName;
import stillroom.desk.products.FormulaPage.LineView;
import stillroom.desk.products.FormulaPage.PhaseView;
import stillroom.desk.products.FormulaPage.Stale;
import stillroom.desk.products.FormulaPage.StepView;
import stillroom.desk.products.FormulaPage.Suggestion;
import stillroom.desk.shell.FindingWords;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Judgement;
import stillroom.desk.shell.Typed;
import stillroom.formulary.Problem;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.evaluation.Portion;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.judgement.Subjects;

/** Puts the page of a version together: the form, what each line comes to, and the judgement. One per request. */
final class FormulaSetting {
    private static final int SUGGESTIONS = 4;
    private static final int FEW_LINES = 2;
    /** One is seen; the others stand by for someone who types faster than answers come. */
    private static final int BLANK_LINES = 6;

    private final Editing editing;
    private final Formula formula;
    private final Draft draft;
    private final Amounts amounts;
    private final Map<String, Double> percents = new HashMap<>();

    private FormulaSetting(Editing editing, Formula formula, Draft draft) {
        this.editing = editing;
        this.formula = formula;
        this.draft = draft;
        Subject subject = Subjects.of(formula, editing.product().brief());
        for (Portion portion : subject.portions()) {
            percents.put(portion.lineId(), portion.share().nominal() * 100);
        }
        this.amounts = Amounts.of(Judgement.of(editing.desk(), subject, editing.book()), editing.workshop());
    }

    /**
     * The page.
     *
     * @param formula what the draft was read as
     * @param draft what stands in the fields
     */
    static FormulaPage page(
            Editing editing, Frame frame, Formula formula, Draft draft, List<Problem> problems, Optional<Stale> stale) {
        FormulaSetting setting = new FormulaSetting(editing, formula, draft);
        return new FormulaPage(
                frame,
                editing.product(),
                editing.version(),
                new Typed(draft.values(), problems),
                setting.phases(),
                setting.names(),
                setting.amounts,
                stale);
    }

    private List<CardName> names() {
        Cards cards = editing.cards();
        return editing.version().kept()
                ? List.of()
                : cards.all().stream()
                        .map(card -> new CardName(cards.name(card.key()), cards.inci(card.key())))
                        .toList();
    }

    private List<PhaseView> phases() {
        List<PhaseView> phases = new ArrayList<>();
        int version = editing.version().number();
        for (Slot slot : draft.slots()) {
            phases.add(new PhaseView(
                    slot.phase(),
                    phaseName(slot.phase()),
                    Format.figure(share(slot), editing.decimals()),
                    lines(slot, phases.isEmpty()),
                    steps(slot.steps()),
                    draft.freshIds("l" + slot.phase() + "-", version, BLANK_LINES),
                    draft.freshId("s" + slot.phase() + "-", version),
                    phases.isEmpty(),
                    phases.size() == draft.slots().size() - 1));
        }
        return phases;
    }

    private String phaseName(String id) {
        return formula.phase(id).map(phase -> phase.name()).orElse("");
    }

    private double share(Slot slot) {
        return slot.lines().stream()
                .mapToDouble(id -> percents.getOrDefault(id, 0.0))
                .sum();
    }

    private List<LineView> lines(Slot slot, boolean firstPhase) {
        List<LineView> lines = new ArrayList<>();
        int last = draft.slots().size() - 1;
        boolean lastPhase = draft.slots().get(last).phase().equals(slot.phase());
        for (String id : slot.lines()) {
            boolean first = firstPhase && lines.isEmpty();
            boolean atEnd = lastPhase && lines.size() == slot.lines().size() - 1;
            lines.add(line(id, first, atEnd));
        }
        return lines;
    }

    private LineView line(String id, boolean first, boolean last) {
        Optional<Line> line = formula.line(id);
        String key = line.map(Line::materialKey).orElse("");
        String typed = draft.value(Draft.line(id, "material"));
        boolean unknown = line.isPresent() && !editing.cards().has(key);
        return new LineView(
                id,
                unknown ? "" : key,
                typed.isEmpty() ? "the line without a name" : typed,
                editing.cards().inci(key),
                AmountKind.read(draft.value(Draft.line(id, "kind")), ""),
                Format.figure(percents.getOrDefault(id, 0.0), editing.decimals()),
                unknown ? key : "",
                unknown ? suggestions(key) : List.of(),
                unknown ? List.of() : told(id),
                unknown ? List.of() : toldElsewhere(id),
                first,
                last);
    }

    /** The findings that are told in full beside this line: one that concerns many lines is told beside the first. */
    private List<Finding> told(String id) {
        return amounts.onLine(id).stream()
                .filter(finding ->
                        finding.lines().size() <= FEW_LINES || first(finding).equals(id))
                .toList();
    }

    private List<String> toldElsewhere(String id) {
        return amounts.onLine(id).stream()
                .filter(finding ->
                        finding.lines().size() > FEW_LINES && !first(finding).equals(id))
                .map(finding -> FindingWords.of(finding) + ": concerns this line too, see "
                        + draft.value(Draft.line(first(finding), "material")))
                .toList();
    }

    /** The first of a finding's lines in working order. */
    private String first(Finding finding) {
        return draft.slots().stream()
                .flatMap(slot -> slot.lines().stream())
                .filter(finding.lines()::contains)
                .findFirst()
                .orElse("");
    }

    private List<Suggestion> suggestions(String typed) {
        Cards cards = editing.cards();
        return cards.similar(typed, SUGGESTIONS).stream()
                .map(card -> new Suggestion(card.key(), cards.name(card.key())))
                .toList();
    }

    private static List<StepView> steps(List<String> ids) {
        List<StepView> steps = new ArrayList<>();
        for (String id : ids) {
            steps.add(new StepView(
                    id, Integer.toString(steps.size() + 1), steps.isEmpty(), steps.size() == ids.size() - 1));
        }
        return steps;
    }
}
