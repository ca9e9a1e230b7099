package stillroom.desk.trials;

import io.javalin.http.NotFoundResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.TreeMap;
import java.util.zip.CRC32;
import stillroom.desk.shell.Desk;
import stillroom.formulary.trial.TrialSet;
import stillroom.ledger.document.Drawer;

/** Where sets of trials are kept. */
public final class TrialBook {
    private final Drawer<TrialSet> drawer;

    public TrialBook(Desk desk) {
        this.drawer = desk.ledger().drawer(TrialSet.DRAWER, TrialSet.class);
    }

    public List<TrialSet> all() {
        return drawer.list();
    }

    TrialSet one(String key) {
        return drawer.read(key).orElseThrow(() -> new NotFoundResponse("There is no set of trials at this address."));
    }

    public void write(TrialSet set) {
        drawer.write(set.key(), set);
    }

    /** A mark of what was entered, by which a form tells whether it still shows what is stored. */
    static String mark(TrialSet set) {
        CRC32 sum = new CRC32();
        for (TrialSet.Run run : set.runs()) {
            String entered = run.version() + " " + run.settings() + new TreeMap<>(run.measured())
                    + new TreeMap<>(run.scores()) + run.note() + "\n";
            sum.update(entered.getBytes(StandardCharsets.UTF_8));
        }
        return Long.toHexString(sum.getValue());
    }

    String freeKey() {
        return String.format("t%04d", drawer.list().size() + 1);
    }
}
