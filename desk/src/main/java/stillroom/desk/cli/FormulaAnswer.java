package stillroom.desk.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stillroom.desk.files.FormulaIn;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.rule.RuleTables;
import stillroom.ledger.Ledger;
import stillroom.ledger.exchange.FileProblem;

/** What became of one formula file that was to be imported. */
record FormulaAnswer(String file, FormulaIn read, Optional<FormulaVersion> stored) {
    static FormulaAnswer of(String file, byte[] text, MaterialBook book, Optional<Ledger> ledger, boolean store) {
        FormulaIn read = FormulaIn.read(text, book, RuleTables.standard());
        Optional<FormulaVersion> stored = store && read.ready().isPresent()
                ? ledger.map(one -> read.store(one, Instant.now()))
                : Optional.empty();
        return new FormulaAnswer(file, read, stored);
    }

    boolean isClear() {
        return read.ready().isPresent();
    }

    String text() {
        if (read.ready().isEmpty()) {
            return file + " cannot be read: " + sentences(read.problems());
        }
        String name = read.ready().get().file().name();
        String became = stored.map(version -> "stored as product " + version.productId() + ", a draft")
                .orElse("not stored");
        String remarks = read.remarks().isEmpty() ? "" : " " + sentences(read.remarks());
        return file + ": " + name + ", " + read.ready().get().formula().lines().size() + " lines, " + became + "."
                + remarks;
    }

    private static String sentences(List<FileProblem> problems) {
        return problems.stream().map(FileProblem::words).collect(Collectors.joining("; "));
    }

    ObjectNode json() {
        ObjectNode said = JsonNodeFactory.instance.objectNode();
        said.put("file", file);
        read.ready().ifPresent(ready -> {
            said.put("formula", ready.file().name());
            said.put("lines", ready.formula().lines().size());
        });
        stored.ifPresent(version -> said.put("path", "/products/" + version.productId() + "/versions/1"));
        list(said.putArray("problems"), read.problems());
        list(said.putArray("remarks"), read.remarks());
        return said;
    }

    private static void list(ArrayNode into, List<FileProblem> problems) {
        problems.forEach(problem -> into.add(problem.words()));
    }
}
