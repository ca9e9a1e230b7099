package stillroom.desk.imports;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.ledger.imports.Opened;
import stillroom.ledger.imports.SpreadsheetFile;

/** Files that were brought in and are looked at; held in memory until they are stored or left. Thread-safe. */
final class Upload {
    /** A file that came in. */
    record Incoming(String name, byte[] bytes) {}

    /** How far the work is. */
    enum Stage {
        READING("reading"),
        READ("read"),
        STORING("storing"),
        DONE("done"),
        STOPPED("stopped");

        private final String words;

        Stage(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    private final String id;
    private final int files;
    private final List<HeldSheet> sheets = new ArrayList<>();
    private final List<Outcome> refused = new ArrayList<>();
    private final List<Outcome> outcomes = new ArrayList<>();
    private final Set<String> stored = new HashSet<>();
    private Stage stage = Stage.READING;
    private int done;
    private int todo;
    private boolean stopAsked;

    Upload(String id, int files) {
        this.id = id;
        this.files = files;
        this.todo = files;
    }

    String id() {
        return id;
    }

    int files() {
        return files;
    }

    /** Reads one file after the other until all are read or the maker stops it. */
    void read(List<Incoming> incoming, CardNames cards) {
        for (Incoming file : incoming) {
            if (isStopAsked()) {
                break;
            }
            Opened opened = SpreadsheetFile.open(file.name(), file.bytes());
            String shown = SpreadsheetFile.shown(file.name());
            try {
                opened.match(
                        found -> take(shown, found, cards),
                        refusal -> refuse(new Outcome(shown, shown, "", List.of(refusal.sentence()))));
            } catch (RuntimeException fault) {
                refuse(new Outcome(shown, shown, "", List.of("\"" + shown + "\" cannot be understood.")));
            }
            step();
        }
        end(isStopAsked() ? Stage.STOPPED : Stage.READ);
    }

    private boolean take(String shown, Opened.Sheets found, CardNames cards) {
        int before = sheets().size();
        found.sheets().forEach(grid -> {
            HeldSheet sheet = HeldSheet.of(nextNumber(), shown, grid, Decisions.NONE, cards.index());
            if (!sheet.read().isEmpty() || found.sheets().size() == 1 || grid.height() > 3) {
                add(sheet);
            }
        });
        boolean understood =
                sheets().stream().skip(before).anyMatch(sheet -> !sheet.read().isEmpty());
        return understood
                || refuse(new Outcome(
                        shown,
                        shown,
                        "",
                        List.of("No formula and no list of materials was understood in \"" + shown + "\".")));
    }

    private synchronized int nextNumber() {
        return sheets.size() + 1;
    }

    private synchronized void add(HeldSheet sheet) {
        sheets.add(sheet);
    }

    private synchronized boolean refuse(Outcome outcome) {
        refused.add(outcome);
        return false;
    }

    synchronized void step() {
        done++;
    }

    synchronized void begin(Stage begun, int count) {
        stage = begun;
        done = 0;
        todo = count;
        stopAsked = false;
    }

    synchronized void end(Stage ended) {
        stage = ended;
    }

    synchronized void stop() {
        stopAsked = true;
    }

    synchronized boolean isStopAsked() {
        return stopAsked;
    }

    synchronized boolean isWorking() {
        return stage == Stage.READING || stage == Stage.STORING;
    }

    synchronized Stage stage() {
        return stage;
    }

    synchronized int done() {
        return done;
    }

    synchronized int todo() {
        return todo;
    }

    synchronized List<HeldSheet> sheets() {
        return List.copyOf(sheets);
    }

    synchronized List<Outcome> refused() {
        return List.copyOf(refused);
    }

    synchronized Optional<HeldSheet> sheet(int number) {
        return sheets.stream().filter(sheet -> sheet.number() == number).findFirst();
    }

    synchronized void replace(HeldSheet sheet) {
        sheets.replaceAll(one -> one.number() == sheet.number() ? sheet : one);
    }

    synchronized List<Outcome> outcomes() {
        return List.copyOf(outcomes);
    }

    synchronized void note(Outcome outcome) {
        outcomes.removeIf(one -> !one.isStored()
                && one.file().equals(outcome.file())
                && one.what().equals(outcome.what()));
        outcomes.add(outcome);
    }

    /** Claims a formula or list for storing; false where it was stored before. */
    synchronized boolean claim(String what) {
        return stored.add(what);
    }

    synchronized void release(String what) {
        stored.remove(what);
    }

    synchronized boolean isStored(String what) {
        return stored.contains(what);
    }
}
