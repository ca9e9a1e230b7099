package stillroom.ledger.seal;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stillroom.formulary.batch.Batch;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.BatchState;
import stillroom.formulary.batch.LogEntry;
import stillroom.formulary.concern.Concern;
import stillroom.ledger.batch.BatchBook;
import stillroom.ledger.batch.BatchBook.Link;
import stillroom.ledger.json.Json;
import stillroom.ledger.store.Attachments;
import stillroom.ledger.store.Database;
import stillroom.ledger.store.Sql;

/** Lets the hash of a log cover what the log refers to, and finds what was altered since. Thread-safe. */
public final class SealBook {
    private final Database database;
    private final BatchBook batches;
    private final Attachments attachments;

    public SealBook(Database database, BatchBook batches, Attachments attachments) {
        this.database = database;
        this.batches = batches;
        this.attachments = attachments;
    }

    /**
     * Enters the digests of all that the log refers to into the log, and keeps the rule tables as they are now, so that a
     * later edition of the program does not take them away. To be called before a decision, in its transaction.
     *
     * @param rules text of each rule table by its name
     */
    public void cover(long batchId, String requestId, Instant at, String by, Map<String, String> rules) {
        database.write(sql -> {
            Batch batch = batches.batch(batchId).orElseThrow();
            Map<String, String> digests = new TreeMap<>(Referred.of(sql, batch, BatchState.of(batches.log(batchId))));
            rules.forEach((name, text) -> digests.put(
                    Referred.RULES + name,
                    attachments.put(Referred.RULES + name, text.getBytes(StandardCharsets.UTF_8))));
            BatchEvent event = new BatchEvent.Concerned(new Concern.Covered(digests));
            return batches.append(batchId, requestId, at, by, event);
        });
    }

    /**
     * Looks at everything.
     *
     * @param head hash that stands on a printed record; none to look at the log alone
     * @throws IllegalArgumentException where there is no such batch
     */
    public Verdict verify(long batchId, Optional<String> head) {
        return database.read(sql -> verify(sql, batchId, head));
    }

    private Verdict verify(Sql sql, long batchId, Optional<String> head) {
        String code = batches.codeOf(batchId);
        List<String> altered = new ArrayList<>();
        List<Link> links = batches.recomputed(batchId);
        List<LogEntry> log = readable(links, altered);
        batches.firstAltered(batchId).ifPresent(entry -> altered.add(broken(entry, links)));
        int covered = pictures(log, altered) + outside(sql, batchId, code, BatchState.of(log), altered);
        Optional<Integer> matched = head.flatMap(wanted -> links.stream()
                .filter(link -> link.recomputed().equalsIgnoreCase(wanted.strip()))
                .map(Link::number)
                .findFirst());
        if (head.isPresent() && matched.isEmpty()) {
            altered.add(
                    "No entry of batch " + code
                            + " has the head hash on the record: the log, the batch or its formula version is not the one that was printed.");
        }
        return new Verdict(
                code,
                links.size(),
                links.isEmpty() ? "" : links.get(links.size() - 1).recomputed(),
                matched,
                covered,
                altered);
    }

    private static String broken(int entry, List<Link> links) {
        if (entry > links.size()) {
            return "Entry " + entry + ": the log ends before the last hash that was written for it.";
        }
        String first = entry == 1 ? ", or the batch's own line or its formula version," : "";
        return "Entry " + entry + first + " is not what it was, or its hash is not.";
    }

    /** Entries that cannot be read any more are left out of the state and named. */
    private static List<LogEntry> readable(List<Link> links, List<String> altered) {
        List<LogEntry> log = new ArrayList<>();
        for (Link link : links) {
            try {
                log.add(Json.read(link.body(), LogEntry.class));
            } catch (RuntimeException unreadable) {
                altered.add("Entry " + link.number() + " cannot be read any more.");
            }
        }
        return log;
    }

    private int pictures(List<LogEntry> log, List<String> altered) {
        List<LogEntry> pictured = log.stream()
                .filter(entry -> entry.event() instanceof BatchEvent.Pictured)
                .toList();
        pictured.forEach(entry -> document(
                ((BatchEvent.Pictured) entry.event()).attachment(), "picture of entry " + entry.number(), altered));
        return pictured.size();
    }

    private int outside(Sql sql, long batchId, String code, BatchState state, List<String> altered) {
        state.concerns()
                .attached()
                .forEach(entry -> document(
                        entry.concern().digest(),
                        Referred.DOCUMENT + entry.concern().name(),
                        altered));
        int documents = state.concerns().attached().size();
        Optional<Map<String, String>> then = state.concerns().covered().stream()
                .reduce((earlier, later) -> later)
                .map(entry -> entry.concern().digests());
        if (then.isEmpty()) {
            return documents;
        }
        Map<String, String> now = now(sql, batchId, state, altered, code);
        new TreeMap<>(then.get()).forEach((name, digest) -> {
            if (name.startsWith(Referred.RULES)) {
                document(digest, name, altered);
            } else if (!digest.equals(now.get(name))) {
                altered.add(
                        now.containsKey(name)
                                ? "The " + name + " is not what it was at the decision."
                                : "The " + name + " is not in the data file any more.");
            }
        });
        return documents + then.get().size();
    }

    private Map<String, String> now(Sql sql, long batchId, BatchState state, List<String> altered, String code) {
        try {
            return Referred.of(sql, batches.batch(batchId).orElseThrow(), state);
        } catch (RuntimeException unreadable) {
            altered.add("The batch " + code + " cannot be read any more.");
            return Map.of();
        }
    }

    private void document(String digest, String name, List<String> altered) {
        Optional<byte[]> bytes = attachments.get(digest);
        if (bytes.isEmpty()) {
            altered.add("The " + name + " is not in the data file any more.");
        } else if (!Attachments.digest(bytes.get()).equals(digest)) {
            altered.add("The " + name + " is not what it was.");
        }
    }
}
