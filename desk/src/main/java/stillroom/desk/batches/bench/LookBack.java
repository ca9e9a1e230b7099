package stillroom.desk.batches.bench;

import io.javalin.http.NotFoundResponse;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.batches.LogWords;
import stillroom.desk.batches.Masses;
import stillroom.desk.batches.bench.BenchPage.Way;
import stillroom.desk.shell.Format;
import stillroom.formulary.batch.BatchEvent.Poured;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.batch.PourCheck;
import stillroom.formulary.batch.Vessel;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.meter.PhMeter;

/** The panels that look back at what was written down: readings, whole weights, rests, single entries. */
final class LookBack {
    private final BatchWork work;
    private final Wish wish;

    LookBack(BatchWork work, Wish wish) {
        this.work = work;
        this.wish = wish;
    }

    Panel read() {
        ReadingKind kind = kind();
        List<Way> kinds = java.util.Arrays.stream(ReadingKind.values())
                .map(one -> new Way(
                        LogWords.kind(one),
                        work.path() + "/bench" + Wish.query(wish.vessel(), Doing.READ, "kind", one.name()),
                        one == kind))
                .toList();
        String band = kind == ReadingKind.PH
                ? work.product().brief().phBand().map(b -> Format.range(b, 1)).orElse("")
                : "";
        LogWords words = new LogWords(work);
        List<String> before = work.state().readings(kind).stream()
                .map(reading -> Format.moment(reading.at(), work.desk().zone()) + ": " + words.say(reading.event()))
                .toList();
        return new Panel.Read(
                "Read the " + (kind == ReadingKind.OTHER ? "product" : LogWords.kind(kind)),
                kinds,
                kind.name(),
                band,
                before,
                work.desk().ledger().meters().meters().stream()
                        .map(PhMeter::name)
                        .toList());
    }

    private ReadingKind kind() {
        for (ReadingKind kind : ReadingKind.values()) {
            if (kind.name().equals(wish.get("kind"))) {
                return kind;
            }
        }
        return ReadingKind.PH;
    }

    Panel gross() {
        Optional<Vessel> vessel = work.state().vessel(wish.vessel());
        LogWords words = new LogWords(work);
        List<String> before = work.log().stream()
                .filter(entry -> work.state().weighings().stream()
                        .anyMatch(back ->
                                back.entry() == entry.number() && back.vessel().equals(wish.vessel())))
                .map(entry -> words.say(entry.event()))
                .toList();
        return new Panel.Gross(
                "Weigh the whole of " + wish.vessel(),
                vessel.flatMap(Vessel::expectedGross).map(Masses::shown).orElse(""),
                before,
                new WaterBack(work, wish.vessel()).address());
    }

    Panel look() {
        return work.state()
                .rest()
                .map(rest -> new Panel.Look(
                        "Look again",
                        Format.moment(rest.event().due(), work.desk().zone()),
                        rest.event().lookFor(),
                        true))
                .orElseGet(() -> new Panel.Look("Look again", "", "", false));
    }

    private LogEntry entry() {
        return work.log().stream()
                .filter(entry -> Integer.toString(entry.number()).equals(wish.get("entry")))
                .findFirst()
                .orElseThrow(() -> new NotFoundResponse("The log has no such entry."));
    }

    Panel strike() {
        LogEntry entry = entry();
        return new Panel.Strike(
                "Strike entry " + entry.number(), entry.number(), new LogWords(work).say(entry.event()));
    }

    /** A weighing whose lots are said anew. */
    Panel lots() {
        LogEntry entry = entry();
        if (!(entry.event() instanceof Poured poured)) {
            throw new NotFoundResponse("Entry " + entry.number() + " is no weighing.");
        }
        return new Panel.NameLots(
                "From which lots did entry " + entry.number() + " come?",
                entry.number(),
                new LogWords(work).say(poured),
                Format.grams(poured.mass()),
                new Lots(work, poured.materialKey())
                        .choices().stream().filter(lot -> !lot.code().isEmpty()).toList(),
                poured.lot().orElse(""));
    }

    Panel again() {
        LogEntry entry = entry();
        if (!(entry.event() instanceof Poured)) {
            throw new NotFoundResponse("Entry " + entry.number() + " is no weighing.");
        }
        return new Panel.Again(
                "Read entry " + entry.number() + " again",
                entry.number(),
                new LogWords(work).say(entry.event()),
                Format.time(entry.at(), work.desk().zone()),
                Duration.between(entry.at(), work.desk().now()).compareTo(PourCheck.OWN_SECOND_LOOK) < 0);
    }
}
