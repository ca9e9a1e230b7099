package stillroom.desk.cli.formula;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BiFunction;
import stillroom.ledger.exchange.Catalogue;
import stillroom.ledger.exchange.FileProblem;
import stillroom.ledger.exchange.FormulaFileReader;
import stillroom.ledger.exchange.Leading;
import stillroom.ledger.exchange.Reading;
import stillroom.ledger.exchange.ReadyFormula;

/** Takes formula files one after the other; one that cannot be read is answered with what is wrong, and the rest goes on. */
final class FormulaInput {
    /** One byte more than is read as a formula, so that the reader sees that it is too large. */
    private static final int MOST_BYTES = 2_000_001;

    private final FormulaOptions options;
    private final Catalogue catalogue;

    FormulaInput(FormulaOptions options, Catalogue catalogue) {
        this.options = options;
        this.catalogue = catalogue;
    }

    /** @param answer of a formula and what was remarked in reading it */
    int each(BiFunction<ReadyFormula, List<FileProblem>, Answer> answer) {
        PrintWriter out = options.spec().commandLine().getOut();
        Status status = Status.CLEAN;
        boolean first = true;
        for (String file : options.files()) {
            if (!options.json() && !first) {
                out.println();
            }
            Answer one = answer(file, answer);
            print(out, file, one);
            status = status.and(one.status());
            first = false;
        }
        out.flush();
        return status.exit();
    }

    private void print(PrintWriter out, String file, Answer answer) {
        if (!options.json()) {
            out.print(answer.text().get());
            return;
        }
        ObjectNode said = JsonNodeFactory.instance.objectNode();
        said.put("file", file);
        said.put("status", answer.status().word());
        said.setAll(answer.json().get());
        out.println(said);
    }

    private Answer answer(String file, BiFunction<ReadyFormula, List<FileProblem>, Answer> answer) {
        Reading reading;
        try {
            reading = FormulaFileReader.read(bytes(file));
        } catch (IOException | InvalidPathException missing) {
            return unreadable(file, List.of(new FileProblem(0, "", "the file cannot be opened")));
        }
        return reading.file()
                .map(one -> answer.apply(Leading.lead(one, catalogue), reading.remarks()))
                .orElseGet(() -> unreadable(file, reading.problems()));
    }

    private static byte[] bytes(String file) throws IOException {
        if (file.equals("-")) {
            return System.in.readNBytes(MOST_BYTES);
        }
        try (InputStream stream = Files.newInputStream(Path.of(file))) {
            return stream.readNBytes(MOST_BYTES);
        }
    }

    static Answer unreadable(String file, List<FileProblem> problems) {
        return new Answer(Status.UNREADABLE, () -> json(problems), () -> text(file, problems));
    }

    private static ObjectNode json(List<FileProblem> problems) {
        ObjectNode said = JsonNodeFactory.instance.objectNode();
        said.put("error", problems.get(0).words());
        said.set("problems", list(problems));
        return said;
    }

    static ArrayNode list(List<FileProblem> problems) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (FileProblem problem : problems) {
            ObjectNode one = list.addObject();
            one.put("textLine", problem.textLine());
            one.put("field", problem.field());
            one.put("sentence", problem.sentence());
        }
        return list;
    }

    private static String text(String file, List<FileProblem> problems) {
        StringBuilder text = new StringBuilder(Plain.paragraph("", 0, file + " cannot be read:"));
        problems.forEach(problem -> text.append(Plain.paragraph("  ", 4, problem.words())));
        return text.toString();
    }
}
