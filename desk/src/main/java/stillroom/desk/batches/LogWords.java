package stillroom.desk.batches;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stillroom.desk.shell.Format;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchEvent.Purpose;
import stillroom.formulary.batch.BatchEventCases;
import stillroom.formulary.formula.ReadingKind;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;

/** Says an entry of a batch log in one sentence. */
public final class LogWords implements BatchEventCases<String> {
    private final BatchWork work;
    private final Cards cards;
    private final ZoneId zone;
    private final Shown shown;

    public LogWords(BatchWork work) {
        this(work, new Shown(List.of()));
    }

    /** @param shown how weighed masses are written */
    public LogWords(BatchWork work, Shown shown) {
        this.work = work;
        this.cards = work.cards();
        this.zone = work.desk().zone();
        this.shown = shown;
    }

    public String say(BatchEvent event) {
        return event.match(this);
    }

    /** What an appearance, a pH ... is called. */
    public static String kind(ReadingKind kind) {
        return switch (kind) {
            case PH -> "pH";
            case VISCOSITY -> "viscosity";
            case SHADE -> "shade";
            case TEMPERATURE -> "temperature";
            case APPEARANCE -> "appearance";
            case ODOUR -> "odour";
            case DENSITY -> "density";
            case OTHER -> "other";
        };
    }

    public static String purpose(Purpose purpose) {
        return switch (purpose) {
            case LINE -> "formula";
            case CORRECTION_ACID -> "acid, to lower the pH";
            case CORRECTION_BASE -> "base, to raise the pH";
            case CORRECTION_THICKENER -> "thickener";
            case CORRECTION_WATER -> "water";
            case CORRECTION_OTHER -> "something else";
            case MISTAKE -> "by mistake";
        };
    }

    /** How a reading was taken, as "electrode 2; neat". */
    public static String how(Map<String, String> how) {
        return how.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(entry -> entry.getKey() + ": " + entry.getValue())
                .collect(Collectors.joining("; "));
    }

    private static String g(Grams mass) {
        return Format.grams(mass) + " g";
    }

    private static String tail(String words) {
        return words.isBlank() ? "" : " " + words.strip();
    }

    private static String degrees(Optional<Double> celsius) {
        return celsius.map(c -> ", " + plain(c) + " °C").orElse("");
    }

    /** A reading as it was typed, no zeros added. */
    public static String plain(double value) {
        return Format.grams(new Grams(java.math.BigDecimal.valueOf(value)));
    }

    @Override
    public String planned(BatchEvent.Planned event) {
        return "Planned: " + g(event.plan().batch()) + " in "
                + event.plan().lines().size() + " lines (" + event.plan().reckoning() + ").";
    }

    @Override
    public String begun(BatchEvent.Begun event) {
        return "Work began." + tail(event.note());
    }

    @Override
    public String vesselReady(BatchEvent.VesselReady event) {
        return event.vessel() + " made ready"
                + event.tare().map(tare -> ", empty " + g(tare)).orElse("")
                + event.capacity().map(most -> ", holds " + g(most)).orElse("") + "."
                + tail(event.clean())
                + event.asItIs().map(why -> " Used as it is: " + why).orElse("");
    }

    @Override
    public String poured(BatchEvent.Poured event) {
        String lot = event.lot()
                .map(code -> "lot " + code + (event.scanned() ? ", scanned" : ""))
                .orElse("lot not booked");
        String what = shown.grams(event.mass().abs(), event.balance()) + " g " + cards.name(event.materialKey()) + " ("
                + lot + ")";
        String into = event.mass().signum() < 0
                ? "Taken back out of " + event.vessel() + ": " + what + ", to waste"
                : "Poured into " + event.vessel() + ": " + what;
        String why = switch (event.purpose()) {
            case LINE -> "";
            case MISTAKE -> ", by mistake";
            default -> ", correction: " + purpose(event.purpose());
        };
        return into + why + "." + tail(event.note());
    }

    @Override
    public String readAgain(BatchEvent.ReadAgain event) {
        return "Entry " + event.entry() + " read again: " + g(event.shown()) + ".";
    }

    @Override
    public String lineAccepted(BatchEvent.LineAccepted event) {
        String line = work.line(event.lineId())
                .map(one -> cards.name(one.materialKey()))
                .orElse("A line");
        return line + " stays as it is: " + event.reason();
    }

    @Override
    public String replanned(BatchEvent.Replanned event) {
        String out = event.surplus().stream()
                .map(one -> g(one.mass()) + " of "
                        + work.formula()
                                .phase(one.phaseId())
                                .map(stillroom.formulary.formula.Phase::name)
                                .orElse(one.phaseId())
                        + " to be thrown away.")
                .collect(Collectors.joining(" "));
        return "The plan is now " + Masses.shown(event.plan().batch()) + " g: " + event.reason() + "." + tail(out);
    }

    @Override
    public String lotsNamed(BatchEvent.LotsNamed event) {
        String parts = event.parts().stream()
                .map(part -> g(part.mass()) + " from lot " + part.lot())
                .collect(Collectors.joining(", "));
        return "Entry " + event.entry() + " came from: " + parts + "." + tail(event.reason());
    }

    @Override
    public String phasesGiven(BatchEvent.PhasesGiven event) {
        String phases = event.phases().stream()
                .map(id -> work.formula()
                        .phase(id)
                        .map(stillroom.formulary.formula.Phase::name)
                        .orElse(id))
                .collect(Collectors.joining(", "));
        return phases + ": goes into " + event.vessel() + ".";
    }

    @Override
    public String stepDone(BatchEvent.StepDone event) {
        String minutes = event.minutes().map(m -> ", " + plain(m) + " min").orElse("");
        String where = event.vessel().isBlank() ? "" : " (" + event.vessel() + ")";
        return "Done" + where + ": " + withoutStop(event.doing()) + degrees(event.celsius()) + minutes + "."
                + tail(event.note());
    }

    private static String withoutStop(String sentence) {
        String bare = sentence.strip();
        return bare.endsWith(".") ? bare.substring(0, bare.length() - 1) : bare;
    }

    @Override
    public String timerStarted(BatchEvent.TimerStarted event) {
        String of = event.vessel().isBlank() ? "" : " for " + event.vessel();
        return "Timer" + of + " until " + Format.time(event.until(), zone) + ": " + event.label() + ".";
    }

    @Override
    public String timerStopped(BatchEvent.TimerStopped event) {
        return "Timer stopped." + tail(event.note());
    }

    @Override
    public String combined(BatchEvent.Combined event) {
        return "All of " + event.from() + degrees(event.fromCelsius()) + " went into " + event.into()
                + degrees(event.intoCelsius()) + ".";
    }

    @Override
    public String vesselWeighed(BatchEvent.VesselWeighed event) {
        return event.vessel() + " weighed as a whole: " + g(event.gross()) + ".";
    }

    @Override
    public String sampled(BatchEvent.Sampled event) {
        return g(event.mass()) + " taken out of " + event.vessel() + ": " + event.what() + ".";
    }

    @Override
    public String readingTaken(BatchEvent.ReadingTaken event) {
        String value = event.value()
                .map(v -> " " + plain(v)
                        + (event.unit().isBlank() || event.kind() == ReadingKind.PH ? "" : " " + event.unit()))
                .orElse("");
        String how = event.how().isEmpty() ? "" : " (" + how(event.how()) + ")";
        String kind = event.kind() == ReadingKind.OTHER ? "reading" : kind(event.kind());
        return "Read: " + kind + value + how + "." + tail(event.words());
    }

    @Override
    public String titrationBegun(BatchEvent.TitrationBegun event) {
        String lot = event.lot().map(code -> " (lot " + code + ")").orElse("");
        String how = event.how().isEmpty() ? "" : " (" + how(event.how()) + ")";
        return g(event.sample()) + " taken out of " + event.vessel() + " to be titrated with "
                + cards.name(event.corrector()) + lot + ", "
                + (event.dilution().equals(Percent.HUNDRED)
                        ? "as it is"
                        : "weighed into water, " + event.dilution() + " %")
                + how + ".";
    }

    @Override
    public String titrationRead(BatchEvent.TitrationRead event) {
        return "Sample of entry " + event.titration() + ": pH " + plain(event.pH()) + " with " + g(event.added())
                + " added.";
    }

    @Override
    public String restBegun(BatchEvent.RestBegun event) {
        return "Left to rest until " + Format.moment(event.due(), zone) + "." + tail(event.lookFor());
    }

    @Override
    public String restEnded(BatchEvent.RestEnded event) {
        return "Rest ended." + tail(event.note());
    }

    @Override
    public String filled(BatchEvent.Filled event) {
        return event.containers() + " × " + event.pack() + " filled from " + event.vessel() + ", " + g(event.total())
                + " together"
                + event.packLot().map(lot -> ", container lot " + lot).orElse("")
                + event.retained().map(kept -> ", " + g(kept) + " retained").orElse("") + "." + tail(event.note());
    }

    @Override
    public String handedOver(BatchEvent.HandedOver event) {
        return g(event.mass()) + " of " + event.vessel() + " handed over to batch " + event.toBatch() + ".";
    }

    @Override
    public String bulkReceived(BatchEvent.BulkReceived event) {
        Grams mass =
                Grams.sum(event.parts().stream().map(BatchEvent.BulkPart::mass).toList());
        return "Bulk of batch " + event.fromBatch() + " into " + event.vessel() + ": "
                + g(mass.minus(event.waterLost())) + ".";
    }

    @Override
    public String pictured(BatchEvent.Pictured event) {
        return "Picture, " + event.when() + "." + tail(event.words());
    }

    @Override
    public String noted(BatchEvent.Noted event) {
        return event.text();
    }

    @Override
    public String struck(BatchEvent.Struck event) {
        return "Entry " + event.entry() + " struck: " + event.reason();
    }

    @Override
    public String concerned(BatchEvent.Concerned event) {
        return event.concern().match(new ConcernWords());
    }

    @Override
    public String decided(BatchEvent.Decided event) {
        String overruled =
                event.overruled().isEmpty() ? "" : " Overruled: " + String.join("; ", event.overruled()) + ".";
        return Format.words(event.decision()).substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                + Format.words(event.decision()).substring(1) + " by " + event.by() + "." + tail(event.reason())
                + overruled;
    }
}
