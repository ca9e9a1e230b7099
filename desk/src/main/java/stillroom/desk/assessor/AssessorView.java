package stillroom.desk.assessor;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillroom.desk.assessor.AssessorFile.BatchOf;
import stillroom.desk.assessor.AssessorFile.Fact;
import stillroom.desk.assessor.AssessorFile.Found;
import stillroom.desk.assessor.AssessorFile.Paper;
import stillroom.desk.assessor.AssessorFile.Preservative;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.ReadingRows;
import stillroom.desk.chemistry.Studied;
import stillroom.desk.labels.LabelView;
import stillroom.desk.papers.PaperBook;
import stillroom.desk.papers.PaperBook.On;
import stillroom.desk.safety.SafetySheet;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.FindingWords;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Judgement;
import stillroom.formulary.batch.BatchStage;
import stillroom.formulary.batch.Yield;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Figure;
import stillroom.formulary.evaluation.PreservativeState;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.label.Label;
import stillroom.formulary.label.LabelWarning;
import stillroom.ledger.batch.BatchRow;
import stillroom.ledger.workshop.Workshop;

/** Puts the assessor's file together from what the workshop knows of a version. */
record AssessorView(Desk desk, Studied of, Evaluation judged) {
    /** Readings of so many batches, newest first: a file is to be read, not weighed. */
    private static final int MOST_BATCHES = 20;

    static AssessorFile file(Desk desk, Studied of) {
        return new AssessorView(desk, of, Judgement.of(desk, of.subject(), of.book())).file();
    }

    private AssessorFile file() {
        Workshop workshop = desk.ledger().settings().read();
        Label label = new LabelView(desk, of.product(), of.version()).label("");
        SafetySheet safety = SafetySheet.of(desk, of);
        PaperBook filed = PaperBook.of(desk.ledger());
        return new AssessorFile(
                workshop.name(),
                workshop.demonstration(),
                of.about(),
                Format.day(desk.today()),
                "Law of " + judged.market() + " as recorded on " + Format.day(judged.lawRecordedOn()) + ", asked as of "
                        + Format.day(judged.asOf()) + ".",
                new Missing(desk, of, judged, label, safety, filed).sentences(),
                facts(of.product().brief()),
                Shares.of(judged.composition(), of),
                Raws.of(of, filed),
                figures(),
                judged.preservation().stream().map(AssessorView::preservative).toList(),
                safety,
                judged.findings().stream()
                        .map(found -> new Found(FindingWords.of(found), found.says(), found.rule(), found.source()))
                        .toList(),
                made(desk, of).limit(MOST_BATCHES).map(this::batch).toList(),
                all(desk, of)
                        .filter(row -> row.stage() == BatchStage.PLANNED)
                        .map(row -> row.batch().code())
                        .collect(Collectors.joining(", ")),
                papers(filed),
                label.ingredientText(),
                label.warnings().stream()
                        .map(LabelWarning::text)
                        .filter(text -> !text.isBlank())
                        .toList());
    }

    /** The batches of the version that were begun, newest first. */
    static Stream<BatchRow> made(Desk desk, Studied of) {
        return all(desk, of).filter(row -> row.stage() != BatchStage.PLANNED);
    }

    private static Stream<BatchRow> all(Desk desk, Studied of) {
        return desk
                .ledger()
                .batches()
                .fromVersion(of.product().id(), of.version().number())
                .stream();
    }

    private List<Fact> facts(Brief brief) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(
                "Kind of product", brief.type().words() + (brief.type().leaveOn() ? ", left on" : ", rinsed off")));
        facts.add(new Fact(
                "For", brief.people().stream().sorted().map(Format::words).collect(Collectors.joining(", "))));
        facts.add(new Fact("Where", brief.where()));
        facts.add(new Fact("Market", brief.market()));
        facts.add(new Fact(
                "pH band", brief.phBand().map(band -> Format.range(band, 1)).orElse("none set")));
        facts.add(new Fact("Claims", String.join("; ", brief.claims())));
        facts.add(new Fact("Pack", brief.pack()));
        return facts.stream().filter(fact -> !fact.words().isBlank()).toList();
    }

    private List<Fact> figures() {
        List<Fact> figures = new ArrayList<>();
        figures.add(figure(judged.figures().waterPercent()));
        figures.add(judged.figures()
                .ph()
                .match(AssessorView::figure, because -> new Fact("Expected pH", "not known: " + because)));
        judged.figures().others().forEach(figure -> figures.add(figure(figure)));
        return figures;
    }

    private static Fact figure(Figure figure) {
        String range = Format.range(figure.low(), figure.high(), 2);
        return new Fact(figure.name(), (range + " " + figure.unit()).strip() + ". " + figure.method());
    }

    private static Preservative preservative(PreservativeState state) {
        String free = state.freeIsAtMost()
                ? "at most " + Format.figure(state.freePercent().high(), 3)
                : Format.range(state.freePercent(), 3);
        return new Preservative(
                state.name(),
                Format.range(state.totalRangePercent(), 3),
                Format.range(state.undissociatedPercent(), 0),
                free + (state.mayCrystallise() ? "; may crystallise" : ""),
                state.note());
    }

    private BatchOf batch(BatchRow row) {
        BatchWork work = BatchWork.of(desk, row.batch().id());
        Yield yield = Yield.of(work.state());
        return new BatchOf(
                row.batch().code(),
                Format.day(row.batch().openedOn()),
                row.stage().words(),
                Format.grams(yield.added()) + " g put in, " + Format.grams(yield.filled()) + " g filled",
                ReadingRows.of(work));
    }

    private List<Paper> papers(PaperBook filed) {
        return filed.on(On.PRODUCT, Long.toString(of.product().id())).stream()
                .map(one -> new Paper(
                        one.paper().title(),
                        one.paper().kind().words(),
                        day(one.paper().dated()),
                        day(one.paper().reviewBy()),
                        one.paper().note()))
                .toList();
    }

    private static String day(Optional<LocalDate> day) {
        return day.map(Format::day).orElse("");
    }
}
