package stillroom.desk.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;

/** What reads problems as JSON and answers each; the same whether it was called with options or without. */
@FunctionalInterface
public interface Answering {
    /** @return the exit status */
    int answer(InputStream problems, PrintWriter out, PrintWriter err) throws IOException;

    /** @param file or {@code -} for standard input */
    default int answer(String file, PrintWriter out, PrintWriter err) throws IOException {
        try (InputStream problems = file.equals("-") ? System.in : Files.newInputStream(Path.of(file))) {
            return answer(problems, out, err);
        } finally {
            out.flush();
        }
    }
}
