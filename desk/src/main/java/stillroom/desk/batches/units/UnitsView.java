package stillroom.desk.batches.units;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import stillroom.desk.batches.BatchHead;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.ConcernWords;
import stillroom.desk.batches.Who;
import stillroom.desk.batches.units.UnitsPage.Document;
import stillroom.desk.batches.units.UnitsPage.Holder;
import stillroom.desk.batches.units.UnitsPage.Line;
import stillroom.desk.batches.units.UnitsPage.Overrun;
import stillroom.desk.batches.units.UnitsPage.Standing;
import stillroom.desk.batches.units.UnitsPage.Stop;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.Problem;
import stillroom.formulary.batch.BatchEvent.Decision;
import stillroom.formulary.batch.Hold;
import stillroom.formulary.concern.Concern;
import stillroom.formulary.concern.Concerns;
import stillroom.formulary.concern.Entry;
import stillroom.formulary.concern.Units;

/** Puts the page together. */
final class UnitsView {
    private static final Set<String> GENERAL = Set.of("act", "batch", "entry", "deviation");

    private final BatchWork work;
    private final Concerns concerns;
    private final ConcernWords words = new ConcernWords();

    UnitsView(BatchWork work) {
        this.work = work;
        this.concerns = work.state().concerns();
    }

    UnitsPage page(Frame frame, Optional<Input> input) {
        Typed typed = input.map(Input::typed).orElse(Typed.NOTHING);
        Units units = work.state().units();
        return new UnitsPage(
                frame,
                BatchHead.of(work),
                typed,
                concerns.stops().stream().map(this::stop).toList(),
                Choice.of(Concern.Stop.class, ConcernWords::stop),
                standing(units),
                units.at().entrySet().stream()
                        .map(one -> new Holder(
                                one.getKey().isEmpty() ? "nobody named" : one.getKey(),
                                Integer.toString(one.getValue())))
                        .toList(),
                Choice.of(Concern.Move.class, ConcernWords::move),
                lines(concerns.moves()),
                lines(concerns.samples()),
                lines(concerns.complaints()),
                lines(concerns.reactions()),
                concerns.attached().stream().map(this::document).toList(),
                work.holds().stream()
                        .filter(Hold::over)
                        .map(hold -> new Overrun(
                                hold.name(),
                                hold.says() + ".",
                                hold.reason(work.state()).orElse("")))
                        .toList(),
                work.state().isDecided(Decision.RELEASED),
                work.state().decision().isEmpty(),
                UUID.randomUUID().toString(),
                new Who(typed.value("by", work.who().pours()), ""),
                work.desk().today().toString(),
                typed.problems().stream()
                        .filter(problem -> GENERAL.contains(problem.field()))
                        .map(Problem::sentence)
                        .toList());
    }

    private Stop stop(Entry<Concern.Stopped> stop) {
        return new Stop(
                stop.number(),
                words.stopped(stop.concern()),
                when(stop),
                stop.concern().stop() == Concern.Stop.AWAIT);
    }

    private static Standing standing(Units units) {
        return new Standing(
                Integer.toString(units.filled()),
                Integer.toString(units.out()),
                Integer.toString(units.returned()),
                Integer.toString(units.withdrawn()),
                Integer.toString(units.onShelf()),
                units.counted().isPresent() ? "as counted; by the book " + units.byBook() : "by the book, not counted",
                units.reconciledPercent().map(p -> Format.decimal(p, 0)).orElse(""));
    }

    private <C extends Concern> List<Line> lines(List<Entry<C>> entries) {
        return entries.stream()
                .map(entry -> new Line(entry.number(), entry.concern().match(words), when(entry)))
                .toList();
    }

    private Document document(Entry<Concern.Attached> entry) {
        return new Document(
                entry.concern().name(),
                work.path() + "/documents/" + entry.concern().digest(),
                entry.concern().size() + " bytes, " + when(entry));
    }

    private String when(Entry<?> entry) {
        return Format.moment(entry.at(), work.desk().zone()) + " · " + entry.by();
    }
}
