package stillroom.desk.trials;

import io.javalin.http.NotFoundResponse;
import java.util.List;
import stillroom.desk.shell.Desk;
import stillroom.formulary.trial.TrialSet;
import stillroom.ledger.document.Drawer;

/** Where sets of trials are kept. */
public final class TrialBook {
    private final Drawer<TrialSet> drawer;

    public TrialBook(Desk desk) {
        this.drawer = desk.ledger().drawer("trial-set", TrialSet.class);
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

    String freeKey() {
        return String.format("t%04d", drawer.list().size() + 1);
    }
}
