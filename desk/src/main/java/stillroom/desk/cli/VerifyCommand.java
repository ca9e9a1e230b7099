package stillroom.desk.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stillroom.ledger.Ledger;
import stillroom.ledger.seal.Verdict;
import stillroom.ledger.store.Aside;
import stillroom.ledger.store.LedgerException;

/** {@code ./stillroom verify [BATCH] [--head HASH]}: whether a log and what it refers to still is what it was. */
@Command(
        name = "verify",
        mixinStandardHelpOptions = true,
        description = "Shows whether anything in a batch's log, or in what it refers to, was altered.")
public final class VerifyCommand implements Callable<Integer> {
    /** Something is not what it was. */
    static final int ALTERED = 4;

    @Parameters(
            arity = "0..1",
            paramLabel = "BATCH",
            description = "Code of a batch, or - for codes from standard input, one a line. Without it, all batches.")
    private @Nullable String batch;

    @Option(
            names = "--head",
            paramLabel = "HASH",
            description = "The head hash that stands on the signed record. Needs a batch.")
    private @Nullable String head;

    @Mixin
    private DataFolder data = new DataFolder();

    @Mixin
    private AsJson answer = new AsJson();

    @Override
    public Integer call() throws IOException {
        if (head != null && batch == null) {
            throw new LedgerException("A head hash belongs to one batch: say which.");
        }
        if (!Ledger.existsIn(data.path())) {
            throw new LedgerException("There is no workshop in " + data.path() + ".");
        }
        List<Verdict> verdicts = onACopy();
        verdicts.forEach(verdict -> answer.say(written(verdict), words(verdict)));
        return verdicts.stream().allMatch(Verdict::sound) ? 0 : ALTERED;
    }

    /** The workshop may be open meanwhile, so that a copy of this moment is looked at. */
    private List<Verdict> onACopy() throws IOException {
        List<String> codes = codes();
        try (Aside copy = Aside.copyOf(data.path());
                Ledger ledger = Ledger.open(copy.folder())) {
            Optional<String> wanted = Optional.ofNullable(head);
            List<Long> ids = batch == null ? ledger.batches().ids() : ids(ledger, codes);
            return ids.stream().map(id -> ledger.seals().verify(id, wanted)).toList();
        }
    }

    private List<String> codes() throws IOException {
        if (batch == null) {
            return List.of();
        }
        return batch.equals("-")
                ? new String(System.in.readAllBytes(), StandardCharsets.UTF_8)
                        .lines()
                        .map(String::strip)
                        .filter(code -> !code.isEmpty())
                        .toList()
                : List.of(batch);
    }

    private static List<Long> ids(Ledger ledger, List<String> codes) {
        return codes.stream()
                .map(code -> ledger.batches()
                        .idOf(code)
                        .orElseThrow(() -> new LedgerException("There is no batch " + code + ".")))
                .toList();
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
        ObjectNode said = JsonNodeFactory.instance.objectNode();
        said.put("batch", verdict.batch());
        said.put("sound", verdict.sound());
        said.put("entries", verdict.entries());
        said.put("head", verdict.headHash());
        verdict.matched().ifPresent(entry -> said.put("matchesEntry", entry));
        said.put("covered", verdict.covered());
        ArrayNode altered = said.putArray("altered");
        verdict.altered().forEach(altered::add);
        return said;
    }
}
