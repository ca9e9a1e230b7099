package stillroom.desk.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stillroom.ledger.Ledger;
import stillroom.ledger.seal.Verdict;
import stillroom.ledger.store.LedgerException;

/** {@code ./stillroom verify [BATCH] [--head HASH]}: whether a log and what it refers to still is what it was. */
@Command(
        name = "verify",
        mixinStandardHelpOptions = true,
        description = "Shows whether anything in a batch's log, or in what it refers to, was altered.")
public final class VerifyCommand implements Callable<Integer> {
    /** Something is not what it was. */
    static final int ALTERED = 4;

    @Parameters(arity = "0..1", paramLabel = "BATCH", description = "Code of a batch. Without it, all batches.")
    private @Nullable String batch;

    @Option(
            names = "--head",
            paramLabel = "HASH",
            description = "The head hash that stands on the signed record. Needs a batch.")
    private @Nullable String head;

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    @Mixin
    private DataFolder data = new DataFolder();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (head != null && batch == null) {
            throw new LedgerException("A head hash belongs to one batch: say which.");
        }
        if (!Ledger.existsIn(data.path())) {
            throw new LedgerException("There is no workshop in " + data.path() + ".");
        }
        List<Verdict> verdicts = onACopy();
        PrintWriter out = spec.commandLine().getOut();
        verdicts.forEach(verdict -> out.println(json ? written(verdict).toString() : words(verdict)));
        out.flush();
        return verdicts.stream().allMatch(Verdict::sound) ? 0 : ALTERED;
    }

    /** The workshop may be open meanwhile, so that a copy of this moment is looked at. */
    private List<Verdict> onACopy() throws IOException {
        Path folder = Files.createTempDirectory("stillroom-verify");
        try {
            Ledger.backup(data.path(), folder.resolve("stillroom.db"));
            try (Ledger ledger = Ledger.open(folder)) {
                return verdicts(ledger);
            }
        } finally {
            delete(folder);
        }
    }

    private List<Verdict> verdicts(Ledger ledger) {
        Optional<String> wanted = Optional.ofNullable(head);
        if (batch == null) {
            return ledger.batches().ids().stream()
                    .map(id -> ledger.seals().verify(id, wanted))
                    .toList();
        }
        long id =
                ledger.batches().idOf(batch).orElseThrow(() -> new LedgerException("There is no batch " + batch + "."));
        return List.of(ledger.seals().verify(id, wanted));
    }

    private static void delete(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }

    private static String words(Verdict verdict) {
        StringBuilder words = new StringBuilder("Batch " + verdict.batch() + ", " + verdict.entries() + " entries: ");
        words.append(verdict.sound() ? "nothing is altered" : "ALTERED").append('.');
        verdict.matched()
                .ifPresent(entry -> words.append(" The hash on the record is that of entry ")
                        .append(entry)
                        .append(entry == verdict.entries() ? ", the newest." : "; later entries were added since."));
        if (verdict.covered() > 0) {
            words.append(' ').append(verdict.covered()).append(" things outside the log were compared.");
        }
        verdict.altered().forEach(one -> words.append("\n  ").append(one));
        words.append("\n  head ").append(verdict.headHash().isEmpty() ? "none" : verdict.headHash());
        return words.toString();
    }

    private static ObjectNode written(Verdict verdict) {
        ObjectNode answer = JsonNodeFactory.instance.objectNode();
        answer.put("batch", verdict.batch());
        answer.put("sound", verdict.sound());
        answer.put("entries", verdict.entries());
        answer.put("head", verdict.headHash());
        verdict.matched().ifPresent(entry -> answer.put("matchesEntry", entry));
        answer.put("covered", verdict.covered());
        ArrayNode altered = answer.putArray("altered");
        verdict.altered().forEach(altered::add);
        return answer;
    }
}
