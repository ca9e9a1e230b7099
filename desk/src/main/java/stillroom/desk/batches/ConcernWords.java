package stillroom.desk.batches;

import stillroom.desk.shell.Format;
import stillroom.formulary.concern.Concern;
import stillroom.formulary.concern.ConcernCases;

/** Says what concerns a batch as a whole in one sentence. */
public final class ConcernWords implements ConcernCases<String> {
    public static String move(Concern.Move move) {
        return switch (move) {
            case SALE -> "sold to";
            case GIFT -> "given to";
            case RETURN -> "came back from";
            case WITHDRAWN -> "withdrawn";
        };
    }

    public static String stop(Concern.Stop stop) {
        return switch (stop) {
            case HOLD -> "bulk hold";
            case AWAIT -> "awaiting result";
            case PAUSE -> "paused";
        };
    }

    private static String tail(String words) {
        return words.isBlank() ? "" : " " + words.strip();
    }

    private static String from(String whom) {
        return whom.isBlank() ? "" : " from " + whom.strip();
    }

    @Override
    public String stopped(Concern.Stopped concern) {
        String what = switch (concern.stop()) {
            case HOLD -> "On hold: ";
            case AWAIT -> "A result is awaited: ";
            case PAUSE -> "Paused: ";
        };
        return what + concern.reason()
                + concern.by().map(day -> ", by " + Format.day(day)).orElse("") + ".";
    }

    @Override
    public String goneOn(Concern.GoneOn concern) {
        return "What entry " + concern.entry() + " stopped goes on: " + concern.words();
    }

    @Override
    public String explained(Concern.Explained concern) {
        return "Deviation explained (" + concern.deviation() + "): " + concern.reason();
    }

    @Override
    public String moved(Concern.Moved concern) {
        String units = concern.units() + (concern.units() == 1 ? " unit " : " units ");
        return units + move(concern.move()) + tail(concern.to()) + ", " + Format.day(concern.on()) + "."
                + tail(concern.note());
    }

    @Override
    public String unitsCounted(Concern.UnitsCounted concern) {
        return concern.found() + " units counted on the shelf." + tail(concern.note());
    }

    @Override
    public String complained(Concern.Complained concern) {
        return "Complaint" + from(concern.from()) + ", " + Format.day(concern.on()) + ": " + concern.about();
    }

    @Override
    public String reacted(Concern.Reacted concern) {
        return (concern.serious() ? "Serious skin reaction" : "Skin reaction") + " reported" + from(concern.from())
                + ", " + Format.day(concern.on()) + ": " + concern.what();
    }

    @Override
    public String sampleKept(Concern.SampleKept concern) {
        return concern.units() + " retained, "
                + concern.mass().map(mass -> Format.grams(mass) + " g, ").orElse("")
                + concern.where() + ", until " + Format.day(concern.until()) + "." + tail(concern.note());
    }

    @Override
    public String fillChecked(Concern.FillChecked concern) {
        return concern.containers().size() + " filled containers weighed against " + Format.grams(concern.nominal())
                + " g (" + concern.pack() + ").";
    }

    @Override
    public String attached(Concern.Attached concern) {
        return "Document added: " + concern.name() + " (" + concern.size() + " bytes).";
    }

    @Override
    public String covered(Concern.Covered concern) {
        return concern.digests().size() + " things that this record refers to are covered by its hash.";
    }
}
