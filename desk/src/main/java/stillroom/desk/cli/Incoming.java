package stillroom.desk.cli;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.regex.Pattern;
import stillroom.desk.files.FormulaIn;
import stillroom.ledger.imports.Opened;
import stillroom.ledger.imports.SpreadsheetFile;

/**
 * A file or standard input on its way in, opened once; what it is shows in how it begins, not in its name.
 *
 * @param file as it was named; {@code -} is standard input
 * @param stream what it holds; nothing where it is not open, or not there
 */
record Incoming(String file, InputStream stream) implements AutoCloseable {
    /** One byte more than a formula file may have, so that the reader sees that it is too large. */
    private static final int LARGEST_FORMULA = 2_000_001;

    private static final int HEAD = 256;
    private static final Pattern WORKSHOP = Pattern.compile("^\\uFEFF?\\s*\\{\\s*\"stillroom\"\\s*:\\s*\"workshop\"");

    static Incoming named(String file) {
        return new Incoming(file, InputStream.nullInputStream());
    }

    static Incoming open(String file) throws IOException {
        if (file.equals("-")) {
            return new Incoming(file, new BufferedInputStream(System.in));
        }
        return isThere(file)
                ? new Incoming(file, new BufferedInputStream(Files.newInputStream(Path.of(file))))
                : named(file);
    }

    private static boolean isThere(String file) {
        try {
            return Files.isRegularFile(Path.of(file));
        } catch (InvalidPathException noPath) {
            return false;
        }
    }

    /** The same, open. */
    Incoming opened() throws IOException {
        return stream instanceof BufferedInputStream ? this : open(file);
    }

    String shown() {
        return file.equals("-") ? "standard input" : SpreadsheetFile.shown(file);
    }

    private byte[] head() throws IOException {
        if (!stream.markSupported()) {
            return new byte[0];
        }
        stream.mark(HEAD);
        byte[] head = stream.readNBytes(HEAD);
        stream.reset();
        return head;
    }

    boolean isWorkshop() throws IOException {
        return WORKSHOP.matcher(new String(head(), StandardCharsets.UTF_8)).find();
    }

    boolean isFormula() throws IOException {
        return FormulaIn.looksLikeOne(head());
    }

    /** No more of it than the reader of formula files needs to see that it is too large. */
    byte[] bytes() throws IOException {
        return stream.readNBytes(LARGEST_FORMULA);
    }

    Opened sheets() throws IOException {
        return stream instanceof BufferedInputStream
                ? SpreadsheetFile.open(shown(), stream)
                : new Opened.Refused("There is no file \"" + shown() + "\".");
    }

    @Override
    public void close() throws IOException {
        if (!file.equals("-")) {
            stream.close();
        }
    }
}
