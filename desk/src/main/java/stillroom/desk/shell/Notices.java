package stillroom.desk.shell;

import java.util.Map;

/** The sentences that a page may show after something was done; the address carries only their key. */
public final class Notices {
    private static final Map<String, String> SENTENCES = Map.ofEntries(
            Map.entry("saved", "Saved."),
            Map.entry("added", "Added."),
            Map.entry("kept", "Kept. This version does not change any more."),
            Map.entry("copied", "A new version, copied from the one before."),
            Map.entry("planned", "Planned. The plan is the first entry of the batch's log."),
            Map.entry("carried", "A new version, with what was really made. It is a draft until you keep it."),
            Map.entry("anew", "A new version, made anew. It is a draft until you keep it."),
            Map.entry("best", "A new version with the best mixture. It is a draft until you keep it."),
            Map.entry("logged", "Written into the log."),
            Map.entry(
                    "check",
                    "Written into the log. The figure is more than 2 % off what this line asks: check it, and strike the entry if it is mistyped."),
            Map.entry("struck", "Struck. The entry stays in the log, with your reason."),
            Map.entry("counted", "Counted. The stock now says what you found."),
            Map.entry("copied-data", "A copy of everything is written; it stands below."),
            Map.entry("put-back", "The copy is in place. What stood there before lies beside it, under another name."),
            Map.entry("begun", "An empty workshop, yours. The demonstration lies aside in the same folder."),
            Map.entry("filled", "Filled."),
            Map.entry("released", "Released."),
            Map.entry("rejected", "Rejected."),
            Map.entry("scrapped", "Scrapped."),
            Map.entry("recalled", "Recalled. The list of who has units stands on the trace page."),
            Map.entry("held", "On hold. Nothing more is done to these batches, and no unit leaves."),
            Map.entry(
                    "demonstration",
                    "The demonstration workshop is in place. Look around; everything in it is invented."));

    private Notices() {}

    /** The sentence for a key; empty for a key that nobody wrote. */
    public static String sentence(String key) {
        return SENTENCES.getOrDefault(key, "");
    }
}
